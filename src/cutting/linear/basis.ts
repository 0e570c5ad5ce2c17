import { ColumnPool } from "./columnPool";
import { takeAll, takeSome } from "./eliminate";
import type { Work } from "../model/work";

const CHECK_EVERY = 64;
/** Smaller entries of the inverse are rounding, and dropped. */
const DROP = 1e-12;

/** Above this share of entries that are not zero it is faster to go through all. */
const DENSE = 0.45;

/** A point of the simplex method to come back to. */
export interface SimplexState {
  basis: Int32Array;
  x: Float64Array;
  prices: Float64Array;
  rhs: Float64Array;
  inverse: Float64Array;
}

/** A basis of: least cost·x with A·x ≥ rhs, x ≥ 0; its inverse, x and the row prices, kept up to date pivot by pivot. */
export class Basis {
  readonly pool = new ColumnPool();
  /** Column in each basis place; a surplus column of row i is written as -1 - i. */
  readonly basis: Int32Array;
  /** Value of the column in each basis place. */
  readonly x: Float64Array;
  /** Price of each row. */
  readonly prices: Float64Array;
  readonly rhs: Float64Array;
  /** Inverse of the basis matrix, column after column. */
  readonly inverse: Float64Array;
  /** Change of x per unit of the column aimed at. */
  protected readonly direction: Float64Array;
  private readonly nonzero: Int32Array;
  private readonly amounts: Float64Array;
  /** By column: 1 when it is in the basis. */
  protected inBasis = new Uint8Array(256);
  private pivots = 0;

  /** Starts with every row's surplus in the basis. */
  constructor(
    readonly rows: number,
    protected readonly work: Work,
  ) {
    this.basis = Int32Array.from({ length: rows }, (_, i) => -1 - i);
    this.x = new Float64Array(rows);
    this.prices = new Float64Array(rows);
    this.rhs = new Float64Array(rows);
    this.inverse = new Float64Array(rows * rows);
    this.direction = new Float64Array(rows);
    this.nonzero = new Int32Array(rows);
    this.amounts = new Float64Array(rows);
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

  protected reducedCost(column: number): number {
    return column < 0 ? this.prices[-1 - column]! : this.pool.reducedCost(column, this.prices);
  }

  /** Computes how the basis changes per unit of the entering column. */
  protected aim(column: number): void {
    const { rows, inverse, direction, pool } = this;
    direction.fill(0);
    const addRow = (row: number, value: number): void => {
      for (let k = 0, at = row * rows; k < rows; k++, at++) direction[k] = direction[k]! + value * inverse[at]!;
    };
    if (column < 0) addRow(-1 - column, -1);
    else for (let k = pool.start[column]!; k < pool.start[column + 1]!; k++) addRow(pool.rows[k]!, pool.values[k]!);
    this.work.add(rows * (column < 0 ? 1 : pool.start[column + 1]! - pool.start[column]!));
  }

  /** Brings the column aimed at into basis place r. True when the basis was computed afresh as well. */
  protected pivot(r: number, entering: number, reducedCost: number): boolean {
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
    const { rows, inverse, direction, nonzero, amounts } = this;
    const pivot = direction[r]!;
    direction[r] = 0;
    let count = 0;
    for (let k = 0; k < rows; k++) {
      const amount = direction[k]!;
      if (amount > DROP || amount < -DROP) {
        nonzero[count] = k;
        amounts[count++] = amount;
      } else direction[k] = 0;
    }
    const dense = count > DENSE * rows;
    let touched = 0;
    for (let i = 0, at = 0; i < rows; i++, at += rows) {
      const here = inverse[at + r]!;
      if (here > -DROP && here < DROP) {
        inverse[at + r] = 0;
        continue;
      }
      const scaled = here / pivot;
      if (dense) takeAll(inverse, at, direction, scaled);
      else takeSome(inverse, at, nonzero, amounts, count, scaled);
      inverse[at + r] = scaled;
      touched++;
    }
    direction[r] = pivot;
    const leaving = this.basis[r]!;
    if (leaving >= 0) this.inBasis[leaving] = 0;
    if (entering >= 0) this.inBasis[entering] = 1;
    this.basis[r] = entering;
    this.work.add(touched * (dense ? rows >> 1 : count) + 3 * rows);
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
      this.work.add(free.size);
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

  /** Recomputes the prices after a change of costs. */
  refreshPrices(): void {
    const { rows, inverse, pool } = this;
    this.work.add(rows * rows);
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
