import { isFlexible, type Raceway } from "../../raceway/raceway";
import type { TradeSize } from "../../raceway/tradeSize";
import { stickItem } from "../amounts/item";
import { labelKey, type LineBook, type TakeoffLine } from "../amounts/lineBook";
import { stickRule } from "../../rules/stickRules";
import type { RuleBook } from "../../rules/rules";
import type { RowWork } from "../amounts/jobWork";

/** Sticks of one length to buy for runs of one raceway and size. */
export interface CountedSticks {
  readonly works: readonly RowWork[];
  /** [in] */
  readonly length: number;
  readonly sticks: number;
  readonly notes: readonly string[];
  /** How many that are on hand are used besides. */
  readonly onHand?: number;
  /** What one costs by the user's stock. */
  readonly price?: number;
}

/** Joints of a group that take the same couplings. */
interface JointLot {
  readonly line: TakeoffLine;
  readonly raceway: Raceway;
  readonly size: TradeSize;
}

/** Gathers the runs and joints of one group; given its sticks, takes the couplings that come with them off the ones to buy. */
export class StickLots {
  readonly works: RowWork[] = [];
  private readonly joints = new Map<string, JointLot>();

  constructor(
    private readonly group: readonly string[],
    private readonly book: LineBook,
  ) {}

  add(work: RowWork): void {
    const { row, run, joints, coupling, stickCouplingFits } = work;
    if (!isFlexible(run.raceway)) this.works.push(work);
    if (joints === 0) return;
    const line = this.book.add(this.group, coupling, { rows: [row], each: joints, times: run.quantity, note: "" });
    if (stickCouplingFits) this.joints.set(coupling.name, { line, raceway: run.raceway, size: run.size });
  }

  /** Adds the lines of the sticks and of the couplings that come with them. */
  addSticks(counted: readonly CountedSticks[], rules: RuleBook): void {
    const couplings = new Map<string, number>();
    for (const { works, length, sticks, notes, price, onHand = 0 } of counted) {
      const { run, row } = works[0]!;
      const source = { rows: works.map((work) => work.row), each: sticks, times: 1, note: "" };
      const item = {
        ...stickItem(run, length, row.built.fittings.bell),
        ...(price === undefined ? {} : { stockPrice: price }),
      };
      const line = this.book.add(this.group, item, source);
      notes.forEach((note) => line.notes.add(note));
      if (onHand > 0) line.onHand = (line.onHand ?? 0) + onHand;
      const key = labelKey([run.raceway, run.size]);
      const withThem = sticks * rules.number(stickRule("Couplings with each stick", run.raceway));
      couplings.set(key, (couplings.get(key) ?? 0) + withThem);
    }
    for (const { line, raceway, size } of this.joints.values()) {
      giveCouplings(this.book, line, couplings.get(labelKey([raceway, size])) ?? 0);
    }
  }
}

function giveCouplings(book: LineBook, line: TakeoffLine, withSticks: number): void {
  const given = Math.min(line.quantity, withSticks);
  if (given === 0) return;
  const note = `${line.quantity} needed, ${withSticks} come with the sticks`;
  const item = { ...line.item, name: `${line.item.name}, with the sticks`, bought: false, inPlaceOf: line.item.name };
  book.add(line.group, item, { rows: [], each: given, times: 1, note });
  book.add(line.group, line.item, { rows: [], each: -given, times: 1, note });
  line.notes.add(note);
}
