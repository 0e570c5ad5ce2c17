import { ColumnPool } from "./columnPool";
import type { Work } from "./work";

const TINY = 1e-9;
/** A reduced cost below this counts as negative. */
const PRICE_TOLERANCE = 1e-7;
const CHECK_EVERY = 64;

/** A point of the simplex method to come back to. */
export interface SimplexState {
  basis: Int32Array;
  x: Float64Array;
  prices: Float64Array;
  rhs: Float64Array;
  inverse: Float64Array;
}

/**
 * Revised simplex method for: least cost·x with A·x ≥ rhs, x ≥ 0. Columns come in one by one; the inverse of the basis
 * is kept whole, column after column. Its figures steer the search; nothing is proven with them (see bound.ts).
 */
export class Simplex {
  readonly pool = new ColumnPool();
  /** Column in each basis place; a surplus column of row i is written as -1 - i. */
  readonly basis: Int32Array;
  /** Value of the column in each basis place. */
  readonly x: Float64Array;
  /** Price of each row. */
  readonly prices: Float64Array;
  readonly rhs: Float64Array;
  private readonly inverse: Float64Array;
  private readonly direction: Float64Array;
  private readonly nonzero: Int32Array;
  private readonly row: Float64Array;
  private costsNow = new Float64Array(0);
  private weights = new Float64Array(0);
  private inBasis = new Uint8Array(256);
  private pivots = 0;

  /** Starts with every row's surplus in the basis. */
  constructor(
    readonly rows: number,
    private readonly work: Work,
  ) {
    this.basis = Int32Array.from({ length: rows }, (_, i) => -1 - i);
    this.x = new Float64Array(rows);
    this.prices = new Float64Array(rows);
    this.rhs = new Float64Array(rows);
    this.inverse = new Float64Array(rows * rows);
    this.direction = new Float64Array(rows);
    this.nonzero = new Int32Array(rows);
    this.row = new Float64Array(rows);
    for (let i = 0; i < rows; i++) this.inverse[i * rows + i] = -1;
  }

  /** Adds a column; undefined when it is there already. */
  addColumn(rows: readonly number[], values: readonly number[], cost: number): number | undefined {
    const column = this.pool.add(rows, values, cost);
    if (this.pool.count > this.inBasis.length) {
      const wider = new Uint8Array(2 * this.inBasis.length);
      wider.set(this.inBasis);
      this.inBasis = wider;
    }
    return column;
  }

  /** Puts a basis in place: one column a row, for example the single-piece fills. */
  setBasis(columns: ArrayLike<number>): void {
    this.basis.set(columns);
    this.inBasis.fill(0);
    for (const column of this.basis) if (column >= 0) this.inBasis[column] = 1;
    this.refactor();
  }

  /** Everything needed to come back to this point; columns added since stay. */
  save(): SimplexState {
    const { basis, x, prices, rhs, inverse } = this;
    return { basis: basis.slice(), x: x.slice(), prices: prices.slice(), rhs: rhs.slice(), inverse: inverse.slice() };
  }

  /** Comes back to a saved point. */
  restore(state: SimplexState): void {
    this.basis.set(state.basis);
    this.x.set(state.x);
    this.prices.set(state.prices);
    this.rhs.set(state.rhs);
    this.inverse.set(state.inverse);
    this.inBasis.fill(0);
    for (const column of this.basis) if (column >= 0) this.inBasis[column] = 1;
    this.work.add(this.rows * this.rows);
  }

  value(): number {
    let sum = 0;
    for (let r = 0; r < this.rows; r++) {
      const column = this.basis[r]!;
      if (column >= 0) sum += this.pool.costs[column]! * this.x[r]!;
    }
    return sum;
  }

  /** Takes `amount` of the column in basis place `r` as settled: the right side shrinks by it. */
  settle(r: number, amount: number): void {
    const { pool } = this;
    const column = this.basis[r]!;
    for (let k = pool.start[column]!; k < pool.start[column + 1]!; k++) {
      const row = pool.rows[k]!;
      this.rhs[row] = this.rhs[row]! - amount * pool.values[k]!;
    }
    this.x[r] = this.x[r]! - amount;
  }

  /** Recomputes x after a change of the right side. */
  refreshX(): void {
    const { rows, inverse, x } = this;
    x.fill(0);
    for (let i = 0; i < rows; i++) {
      const amount = this.rhs[i]!;
      if (amount !== 0) for (let k = 0, at = i * rows; k < rows; k++, at++) x[k] = x[k]! + amount * inverse[at]!;
    }
    this.work.add(rows * rows);
  }

  /** Primal simplex over the columns in the pool, from a feasible basis. False when the work is used up. */
  primal(): boolean {
    this.priceAll();
    for (let turn = 0; ; turn++) {
      if (turn % 16 === 15 && this.work.over()) return false;
      const entering = this.mostPromising();
      if (entering === undefined) return true;
      this.aim(entering);
      const r = this.leavingPlace();
      if (r < 0) return true;
      const reducedCost = this.reducedCost(entering);
      const leaving = this.basis[r]!;
      const pivot = this.direction[r]!;
      if (this.pivot(r, entering, reducedCost)) this.priceAll();
      else this.updateAll(r, entering, leaving, pivot, reducedCost);
    }
  }

  /** Reduced costs of all columns afresh; all weights of the Devex rule back to one. */
  private priceAll(): void {
    const { pool, prices } = this;
    if (this.costsNow.length < this.rows + pool.count) {
      this.costsNow = new Float64Array(2 * (this.rows + pool.count));
      this.weights = new Float64Array(this.costsNow.length);
    }
    this.costsNow.set(prices);
    const { start, rows, values, costs } = pool;
    for (let j = 0, k = 0; j < pool.count; j++) {
      let cost = costs[j]!;
      for (const end = start[j + 1]!; k < end; k++) cost -= prices[rows[k]!]! * values[k]!;
      this.costsNow[this.rows + j] = cost;
    }
    this.weights.fill(1);
    this.markBasis();
    this.work.add(this.rows + 2 * pool.count + pool.size);
  }

  /** Basic columns have no reduced cost. */
  private markBasis(): void {
    for (const column of this.basis) this.costsNow[column < 0 ? -1 - column : this.rows + column] = 0;
  }

  /** Devex rule: the column whose reduced cost is largest for the length of its edge. */
  private mostPromising(): number | undefined {
    const { costsNow, weights } = this;
    const end = this.rows + this.pool.count;
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
    return at < 0 ? undefined : at < this.rows ? -1 - at : at - this.rows;
  }

  /** Reduced costs and Devex weights after the pivot in place r (the inverse is updated already). */
  private updateAll(r: number, entering: number, leaving: number, pivot: number, reducedCost: number): void {
    const { pool, inverse, row, costsNow, weights } = this;
    const place = (column: number): number => (column < 0 ? -1 - column : this.rows + column);
    const reference = weights[place(entering)]!;
    for (let i = 0, at = r; i < this.rows; i++, at += this.rows) row[i] = inverse[at]!;
    for (let i = 0; i < this.rows; i++) {
      const slope = row[i]!;
      if (slope === 0) continue;
      costsNow[i] = costsNow[i]! + reducedCost * slope;
      const weight = slope * slope * reference;
      if (weight > weights[i]!) weights[i] = weight;
    }
    const { start, rows, values } = pool;
    for (let j = 0, k = 0, to = this.rows; j < pool.count; j++, to++) {
      let slope = 0;
      for (const end = start[j + 1]!; k < end; k++) slope += row[rows[k]!]! * values[k]!;
      if (slope === 0) continue;
      costsNow[to] = costsNow[to]! - reducedCost * slope;
      const weight = slope * slope * reference;
      if (weight > weights[to]!) weights[to] = weight;
    }
    weights[place(leaving)] = Math.max(reference / (pivot * pivot), 1);
    this.markBasis();
    this.work.add(2 * this.rows + 2 * pool.count + pool.size);
  }

  /** Dual simplex over the columns in the pool, from prices that fit every column. False when it gives up. */
  dual(): boolean {
    for (let turn = 0; ; turn++) {
      if (turn % 16 === 15 && (this.work.over() || turn > 20 * this.rows + 200)) return false;
      let r = -1;
      let worst = -1e-7;
      for (let k = 0; k < this.rows; k++) {
        if (this.x[k]! < worst) {
          worst = this.x[k]!;
          r = k;
        }
      }
      if (r < 0) return true;
      const entering = this.dualEntering(r);
      if (entering === undefined) return false;
      this.aim(entering);
      if (Math.abs(this.direction[r]!) < TINY) {
        this.refactor();
        continue;
      }
      this.pivot(r, entering, this.reducedCost(entering));
    }
  }

  private reducedCost(column: number): number {
    return column < 0 ? this.prices[-1 - column]! : this.pool.reducedCost(column, this.prices);
  }

  /** Computes how the basis changes per unit of the entering column. */
  private aim(column: number): void {
    const { rows, inverse, direction, pool } = this;
    direction.fill(0);
    const addRow = (row: number, value: number): void => {
      for (let k = 0, at = row * rows; k < rows; k++, at++) direction[k] = direction[k]! + value * inverse[at]!;
    };
    if (column < 0) addRow(-1 - column, -1);
    else for (let k = pool.start[column]!; k < pool.start[column + 1]!; k++) addRow(pool.rows[k]!, pool.values[k]!);
    this.work.add(rows * (column < 0 ? 1 : pool.start[column + 1]! - pool.start[column]!));
  }

  private leavingPlace(): number {
    const { x, direction } = this;
    let step = Infinity;
    for (let k = 0; k < this.rows; k++) {
      if (direction[k]! > TINY) step = Math.min(step, (Math.max(x[k]!, 0) + TINY) / direction[k]!);
    }
    let place = -1;
    let strongest = 0;
    for (let k = 0; k < this.rows; k++) {
      if (direction[k]! > TINY && Math.max(x[k]!, 0) / direction[k]! <= step && direction[k]! > strongest) {
        strongest = direction[k]!;
        place = k;
      }
    }
    return place;
  }

  private dualEntering(r: number): number | undefined {
    const { pool, prices, row, inverse } = this;
    for (let i = 0, at = r; i < this.rows; i++, at += this.rows) row[i] = inverse[at]!;
    let best = Infinity;
    let strongest = 0;
    let entering: number | undefined;
    const consider = (column: number, slope: number, cost: number): void => {
      if (slope >= -1e-8) return;
      const ratio = Math.max(cost, 0) / -slope;
      if (ratio < best - 1e-10 || (ratio <= best + 1e-10 && -slope > strongest)) {
        best = Math.min(best, ratio);
        strongest = -slope;
        entering = column;
      }
    };
    for (let i = 0; i < this.rows; i++) consider(-1 - i, -row[i]!, prices[i]!);
    const { start, rows, values, costs } = pool;
    for (let j = 0; j < pool.count; j++) {
      if (this.inBasis[j]) continue;
      let slope = 0;
      let cost = costs[j]!;
      for (let k = start[j]!, end = start[j + 1]!; k < end; k++) {
        slope += row[rows[k]!]! * values[k]!;
        cost -= prices[rows[k]!]! * values[k]!;
      }
      consider(j, slope, cost);
    }
    this.work.add(3 * this.rows + 4 * pool.count + 2 * pool.size);
    return entering;
  }

  /** True when the basis was computed afresh as well. */
  private pivot(r: number, entering: number, reducedCost: number): boolean {
    const { rows, x, direction, prices } = this;
    const step = x[r]! / direction[r]!;
    for (let k = 0; k < rows; k++) x[k] = x[k]! - step * direction[k]!;
    x[r] = step;
    this.exchange(r, entering);
    const { inverse } = this;
    for (let i = 0, at = r; i < rows; i++, at += rows) prices[i] = prices[i]! + reducedCost * inverse[at]!;
    this.pivots++;
    if (this.pivots % CHECK_EVERY !== 0 || this.drift() <= 1e-6) return false;
    this.refactor();
    return true;
  }

  /** Puts the column aimed at into basis place r and updates the inverse. */
  private exchange(r: number, entering: number): void {
    const { rows, inverse, direction, nonzero } = this;
    const pivot = direction[r]!;
    let count = 0;
    for (let k = 0; k < rows; k++) if (k !== r && Math.abs(direction[k]!) > 1e-12) nonzero[count++] = k;
    let touched = 0;
    for (let i = 0, at = 0; i < rows; i++, at += rows) {
      const here = inverse[at + r]!;
      if (here === 0) continue;
      const scaled = here / pivot;
      for (let n = 0; n < count; n++) {
        const k = at + nonzero[n]!;
        inverse[k] = inverse[k]! - scaled * direction[nonzero[n]!]!;
      }
      inverse[at + r] = scaled;
      touched++;
    }
    const leaving = this.basis[r]!;
    if (leaving >= 0) this.inBasis[leaving] = 0;
    if (entering >= 0) this.inBasis[entering] = 1;
    this.basis[r] = entering;
    this.work.add(touched * count + 3 * rows);
  }

  /** Largest reduced cost in the basis: zero but for rounding. */
  private drift(): number {
    let worst = 0;
    for (const column of this.basis) worst = Math.max(worst, Math.abs(this.reducedCost(column)));
    return worst;
  }

  /** Computes the inverse, x and the prices afresh from the basis. */
  refactor(): void {
    const { rows, inverse, pool } = this;
    const wanted = [...this.basis];
    const keepSurplus = new Set(wanted.filter((column) => column < 0).map((column) => -1 - column));
    const free = new Set<number>();
    inverse.fill(0);
    for (let i = 0; i < rows; i++) {
      inverse[i * rows + i] = -1;
      this.basis[i] = -1 - i;
      if (!keepSurplus.has(i)) free.add(i);
    }
    const length = (column: number): number => pool.start[column + 1]! - pool.start[column]!;
    for (const column of wanted.filter((column) => column >= 0).sort((a, b) => length(a) - length(b) || a - b)) {
      this.aim(column);
      let place = -1;
      for (const k of free) {
        if (place < 0 || Math.abs(this.direction[k]!) > Math.abs(this.direction[place]!)) place = k;
      }
      if (place < 0 || Math.abs(this.direction[place]!) < 1e-9) continue;
      free.delete(place);
      this.exchange(place, column);
    }
    this.inBasis.fill(0);
    for (const column of this.basis) if (column >= 0) this.inBasis[column] = 1;
    this.refreshX();
    this.refreshPrices();
  }

  private refreshPrices(): void {
    const { rows, inverse, pool } = this;
    for (let i = 0; i < rows; i++) {
      let price = 0;
      for (let r = 0, at = i * rows; r < rows; r++, at++) {
        const column = this.basis[r]!;
        if (column >= 0) price += pool.costs[column]! * inverse[at]!;
      }
      this.prices[i] = price;
    }
  }
}
