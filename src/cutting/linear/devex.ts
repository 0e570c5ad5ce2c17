import type { Basis } from "./basis";
import type { Work } from "../model/work";

/** A reduced cost below this counts as negative. */
const PRICE_TOLERANCE = 1e-7;

/** Chooses columns for the primal simplex method by the Devex rule, with reduced costs kept up to date. */
export class Devex {
  /** Reduced cost and weight: first the surplus of each row, then the columns of the pool. */
  private costsNow = new Float64Array(0);
  private weights = new Float64Array(0);
  private readonly row: Float64Array;

  constructor(
    private readonly basis: Basis,
    private readonly work: Work,
  ) {
    this.row = new Float64Array(basis.rows);
  }

  /** Reduced costs of all columns afresh; all weights of the Devex rule back to one. */
  priceAll(): void {
    const { pool, prices } = this.basis;
    if (this.costsNow.length < this.basis.rows + pool.count) {
      this.costsNow = new Float64Array(2 * (this.basis.rows + pool.count));
      this.weights = new Float64Array(this.costsNow.length);
    }
    this.costsNow.set(prices);
    const { start, rows, values, costs } = pool;
    for (let j = 0, k = 0; j < pool.count; j++) {
      let cost = costs[j]!;
      for (const end = start[j + 1]!; k < end; k++) cost -= prices[rows[k]!]! * values[k]!;
      this.costsNow[this.basis.rows + j] = cost;
    }
    this.weights.fill(1);
    this.markBasis();
    this.work.add(this.basis.rows + 2 * pool.count + pool.size);
  }

  /** Basic columns have no reduced cost. */
  private markBasis(): void {
    for (const column of this.basis.basis) this.costsNow[column < 0 ? -1 - column : this.basis.rows + column] = 0;
  }

  /** Devex rule: the column whose reduced cost is largest for the length of its edge. */
  mostPromising(): number | undefined {
    const { costsNow, weights } = this;
    const end = this.basis.rows + this.basis.pool.count;
    let best = 0;
    let at = -1;
    for (let j = 0; j < end; j++) {
      const cost = costsNow[j]!;
      if (cost < -PRICE_TOLERANCE && cost * cost > best * weights[j]!) {
        best = (cost * cost) / weights[j]!;
        at = j;
      }
    }
    this.work.add(end);
    return at < 0 ? undefined : at < this.basis.rows ? -1 - at : at - this.basis.rows;
  }

  /** Reduced costs and Devex weights after the pivot in place r (the inverse is updated already). */
  update(r: number, entering: number, leaving: number, pivot: number, reducedCost: number): void {
    const { row, costsNow, weights } = this;
    const { pool, inverse } = this.basis;
    const place = (column: number): number => (column < 0 ? -1 - column : this.basis.rows + column);
    const reference = weights[place(entering)]!;
    for (let i = 0, at = r; i < this.basis.rows; i++, at += this.basis.rows) row[i] = inverse[at]!;
    for (let i = 0; i < this.basis.rows; i++) {
      const slope = row[i]!;
      if (slope === 0) continue;
      costsNow[i] = costsNow[i]! + reducedCost * slope;
      const weight = slope * slope * reference;
      if (weight > weights[i]!) weights[i] = weight;
    }
    const { start, rows, values } = pool;
    for (let j = 0, k = 0, to = this.basis.rows; j < pool.count; j++, to++) {
      let slope = 0;
      for (const end = start[j + 1]!; k < end; k++) slope += row[rows[k]!]! * values[k]!;
      if (slope === 0) continue;
      costsNow[to] = costsNow[to]! - reducedCost * slope;
      const weight = slope * slope * reference;
      if (weight > weights[to]!) weights[to] = weight;
    }
    weights[place(leaving)] = Math.max(reference / (pivot * pivot), 1);
    this.markBasis();
    this.work.add(2 * this.basis.rows + 2 * pool.count + pool.size);
  }
}
