import type { Raceway } from "../raceway/raceway";
import type { TradeSize } from "../raceway/tradeSize";
import type { Run } from "../shop/runsTable";
import { stickItem } from "./item";
import { labelKey, type LineBook, type TakeoffLine } from "./lineBook";
import type { RuleBook } from "./rules";
import type { RunWork } from "./runWork";
import { countSticks, type PieceCount } from "./stickCount";

/** Pieces of a group that are cut from the same sticks. */
interface PieceLot {
  readonly run: Run;
  readonly pieces: PieceCount[];
  readonly runs: Map<Run, number>;
}

/** Joints of a group that take the same couplings. */
interface JointLot {
  readonly line: TakeoffLine;
  readonly raceway: Raceway;
  readonly size: TradeSize;
}

/** Gathers the pieces and joints of one group, then counts its sticks and the couplings left to buy. */
export class StickLots {
  private readonly pieces = new Map<string, PieceLot>();
  private readonly joints = new Map<string, JointLot>();

  constructor(
    private readonly group: readonly string[],
    private readonly book: LineBook,
  ) {}

  add({ run, pieces, joints, coupling, stickCouplingFits }: RunWork): void {
    const key = labelKey([run.raceway, run.size, String(run.stick)]);
    const lot = this.pieces.get(key) ?? { run, pieces: [], runs: new Map<Run, number>() };
    this.pieces.set(key, lot);
    lot.runs.set(run, pieces.length);
    for (const length of pieces) lot.pieces.push({ length, count: run.quantity });
    if (joints === 0) return;
    const source = { runs: [run], each: joints, times: run.quantity, note: "" };
    const line = this.book.add(this.group, coupling, source);
    if (stickCouplingFits) this.joints.set(coupling.name, { line, raceway: run.raceway, size: run.size });
  }

  /** Adds the lines of sticks, and takes the couplings that come with them off the ones to buy. */
  count(rules: RuleBook): void {
    const couplings = new Map<string, number>();
    for (const { run, pieces, runs } of this.pieces.values()) {
      const sticks = countSticks(pieces, run.stick);
      this.book.add(this.group, stickItem(run, run.stick), {
        runs: [...runs.keys()],
        each: sticks,
        times: 1,
        note: "",
      });
      const key = labelKey([run.raceway, run.size]);
      const withThem = sticks * rules.number(`Couplings with each stick, ${run.raceway}`);
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
  const item = { ...line.item, name: `${line.item.name}, with the sticks`, bought: false };
  book.add(line.group, item, { runs: [], each: given, times: 1, note });
  book.add(line.group, line.item, { runs: [], each: -given, times: 1, note });
  line.notes.add(note);
}
