import { noisyCover } from "../greedy/covers";
import { tightFills } from "../greedy/tightFills";
import type { BinFill, FillCount, Model } from "../model/model";
import { Simplex } from "./simplex";
import type { Work } from "../model/work";

/** The right side is raised by about this much, different in each row, so that ties do not stall the simplex method. */
const NUDGE = 1e-6;
/** The inverse of a basis has this many rows and columns at most: 32 MB. */
const MOST_ROWS = 2000;

/** Does a program of this model have a size that can be worked with? */
export const suitsProgram = ({ weights, bins }: Model): boolean => weights.length + bins.length <= MOST_ROWS;

/** From so many rows on, few good columns serve better than many. */
const LARGE = 500;
const COVERS = 5;
export const isLarge = ({ weights, bins }: Model): boolean => weights.length + bins.length > LARGE;

/**
 * The linear program over fills: fewest main bins so that every weight is covered and no other bin is used more often
 * than it is there. Rows: one a weight, then one for every bin but the main one.
 */
export class Master {
  readonly simplex: Simplex;
  /** The fill of each column. */
  readonly fills: BinFill[] = [];
  private readonly nudges: Float64Array;

  constructor(
    readonly model: Model,
    private readonly work: Work,
    random: () => number,
  ) {
    const rows = model.weights.length + model.bins.length - 1;
    this.simplex = new Simplex(rows, work);
    this.nudges = Float64Array.from({ length: rows }, () => NUDGE * (0.5 + random()));
  }

  /** Adds a fill as a column; undefined when it is there already. */
  addFill(fill: BinFill): number | undefined {
    const rows = [...fill.items];
    const values = [...fill.copies];
    if (fill.bin > 0) {
      rows.push(this.model.weights.length + fill.bin - 1);
      values.push(-1);
    }
    const column = this.simplex.addColumn(rows, values, fill.bin === 0 ? 1 : 0);
    if (column !== undefined) this.fills[column] = fill;
    return column;
  }

  /**
   * First columns: single-weight fills as the basis, whole plans, and fills that leave little room; of a large program, whose
   * every pivot takes long, a few greedy covers instead.
   *
   * @param covers how many, for a large program
   */
  start(
    plans: readonly (readonly FillCount[])[],
    counts: readonly number[],
    random: () => number,
    covers = COVERS,
  ): void {
    const { model } = this;
    const first = model.bins[0]!;
    const basis = new Int32Array(this.simplex.rows);
    for (let item = 0; item < model.weights.length; item++) {
      const copies = Math.min(model.demands[item]!, Math.floor(first.capacity / model.weights[item]!));
      basis[item] = this.addFill({ bin: 0, items: [item], copies: [copies] })!;
    }
    for (let row = model.weights.length; row < basis.length; row++) basis[row] = -1 - row;
    this.setCounts(counts);
    this.simplex.setBasis(basis);
    for (const plan of plans) for (const { fill } of plan) this.addFill(fill);
    if (isLarge(model)) {
      for (let n = 0; n < covers; n++) {
        for (const { fill } of noisyCover(model, n / covers, random, this.work)) this.addFill(fill);
      }
    } else for (const fill of tightFills(model, random, this.work)) this.addFill(fill);
  }

  /** Sets the right side: every piece wanted, `counts[bin]` of every bin but the main one. */
  setCounts(counts: readonly number[]): void {
    const { model, simplex } = this;
    const items = model.weights.length;
    for (let row = 0; row < simplex.rows; row++) {
      simplex.rhs[row] =
        row < items ? model.demands[row]! + this.nudges[row]! : -counts[row - items + 1]! - this.nudges[row]!;
    }
  }
}
