import type { CutPiece } from "../cutting/request";
import type { Raceway } from "../raceway/raceway";
import type { TradeSize } from "../raceway/tradeSize";
import { lotPieces } from "./cutLots";
import { stickItem } from "./item";
import { labelKey, type LineBook, type TakeoffLine } from "./lineBook";
import type { RuleBook } from "./rules";
import type { RunWork } from "./runWork";
import { countGrid, countSticks, stickSteps } from "./stickCount";
import { WorkShares } from "./workShares";

/** Joints of a group that take the same couplings. */
interface JointLot {
  readonly line: TakeoffLine;
  readonly raceway: Raceway;
  readonly size: TradeSize;
}

/** Gathers the pieces and joints of one group, then counts its sticks and the couplings left to buy. */
export class StickLots {
  private readonly works = new Map<string, RunWork[]>();
  private readonly joints = new Map<string, JointLot>();

  constructor(
    private readonly group: readonly string[],
    private readonly book: LineBook,
  ) {}

  add(work: RunWork): void {
    const { run, joints, coupling, stickCouplingFits } = work;
    const key = labelKey([run.raceway, run.size, String(run.stick)]);
    const lot = this.works.get(key) ?? [];
    lot.push(work);
    this.works.set(key, lot);
    if (joints === 0) return;
    const line = this.book.add(this.group, coupling, { runs: [run], each: joints, times: run.quantity, note: "" });
    if (stickCouplingFits) this.joints.set(coupling.name, { line, raceway: run.raceway, size: run.size });
  }

  /**
   * Adds the lines of sticks, and takes the couplings that come with them off the ones to buy.
   * @param maxSteps work that the cutting plans may take
   * @returns the work they took
   */
  count(rules: RuleBook, maxSteps: number): { steps: number } {
    const couplings = new Map<string, number>();
    const shares = new WorkShares(maxSteps, this.works.size);
    let spent = 0;
    for (const works of this.works.values()) {
      const { run } = works[0]!;
      const pieces = stickPieces(works, rules);
      const { sticks, least, steps } = shares.next((share) =>
        countSticks(pieces, run.stick, rules.number("Saw kerf"), share),
      );
      spent += steps;
      const source = { runs: works.map((work) => work.run), each: sticks, times: 1, note: "" };
      const line = this.book.add(this.group, stickItem(run, run.stick), source);
      if (least < sticks) line.notes.add(`at least ${least} are needed`);
      const key = labelKey([run.raceway, run.size]);
      const withThem = sticks * rules.number(`Couplings with each stick, ${run.raceway}`);
      couplings.set(key, (couplings.get(key) ?? 0) + withThem);
    }
    for (const { line, raceway, size } of this.joints.values()) {
      giveCouplings(this.book, line, couplings.get(labelKey([raceway, size])) ?? 0);
    }
    return { steps: spent };
  }
}

/** Pieces no longer than their stick: an allowance beyond it is for JOB.CUTS to refuse. */
function stickPieces(works: readonly RunWork[], rules: RuleBook): CutPiece[] {
  const { stick } = works[0]!.run;
  const longest = stickSteps(stick);
  return lotPieces(works, countGrid(stick), rules).map((piece) => ({
    ...piece,
    length: Math.min(piece.length, longest),
  }));
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
