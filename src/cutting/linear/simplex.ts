import { Basis } from "./basis";
import { Devex } from "./devex";
import type { Work } from "../model/work";

const TINY = 1e-9;

/**
 * Revised simplex method for: least cost·x with A·x ≥ rhs, x ≥ 0. Columns come in one by one. Its figures steer the
 * search; nothing is proven with them (see counts.ts and generate.ts).
 */
export class Simplex extends Basis {
  private readonly devex: Devex;
  private readonly row: Float64Array;

  /** Starts with every row's surplus in the basis. */
  constructor(rows: number, work: Work) {
    super(rows, work);
    this.devex = new Devex(this, work);
    this.row = new Float64Array(rows);
  }

  /** Primal simplex over the columns in the pool, from a feasible basis. False when the work is used up. */
  primal(): boolean {
    const { devex } = this;
    devex.priceAll();
    for (let turn = 0; ; turn++) {
      if (turn % 16 === 15 && this.work.over()) return false;
      const entering = devex.mostPromising();
      if (entering === undefined) return true;
      this.aim(entering);
      const r = this.leavingPlace();
      if (r < 0) return true;
      const reducedCost = this.reducedCost(entering);
      const leaving = this.basis[r]!;
      const pivot = this.direction[r]!;
      if (this.pivot(r, entering, reducedCost)) devex.priceAll();
      else devex.update(r, entering, leaving, pivot, reducedCost);
    }
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
}
