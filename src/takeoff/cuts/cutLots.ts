import { WHOLE_STICK } from "../../units/tolerances";
import { roundUpToSteps, type CutGrid } from "../../cutting";
import { remember } from "../../memory/remember";
import type { Raceway } from "../../raceway/raceway";
import { usableStick } from "../../raceway/sticks";
import type { TradeSize } from "../../raceway/tradeSize";
import type { LabeledPiece } from "../saw/cutLabels";
import type { Stick, StockBook } from "./cutStock";
import { compareGroups } from "../amounts/groupBy";
import { stickRule } from "../../rules/stickRules";
import { partsBySize, partsByStick } from "../amounts/jobWork";
import type { RuleBook } from "../../rules/rules";
import type { RowWork } from "../amounts/jobWork";

/** Pieces that are cut from the same sticks. */
export interface CutLot {
  readonly raceway: Raceway;
  readonly size: TradeSize;
  readonly works: readonly RowWork[];
  readonly sticks: readonly Stick[];
}

/**
 * Runs by the sticks they are cut from, in the trade's order: by raceway and size; where the user's stock has nothing
 * for these, also by the stick the runs ask for. Stock that is only on hand is filled up with the runs' sticks.
 */
export function cutLots(works: readonly RowWork[], stock: Stock): CutLot[] {
  const parts = partsBySize(works).flatMap((part) => {
    const { raceway, size } = part[0]!.run;
    return stock.sticksFor(raceway, size).length > 0 ? [part] : partsByStick(part);
  });
  const columns = ["Raceway", "Size", "Stick"];
  const order = (lot: CutLot) => [lot.raceway, lot.size, lot.sticks[0]!.length];
  return parts.map((part) => lotOf(part, stock)).sort((a, b) => compareGroups(columns, order(a), order(b)));
}

type Stock = Pick<StockBook, "sticksFor">;

const lotOf = remember((works: readonly RowWork[], stock: Stock): CutLot => {
  const { raceway, size } = works[0]!.run;
  const sticks = [...withoutBell(works[0]!, stock.sticksFor(raceway, size))];
  if (!sticks.some(({ onHand }) => onHand === null)) {
    const asked = new Set(works.map(({ run }) => run.stick));
    for (const length of asked) sticks.push({ length, onHand: null, price: null });
  }
  return { raceway, size, works, sticks };
});

/** Sticks of 10 or 20 ft without the bell that the rules say they have. */
function withoutBell({ run, row }: RowWork, sticks: readonly Stick[]): readonly Stick[] {
  const { bell } = row.built.fittings;
  if (bell === 0) return sticks;
  return sticks.map((stick) => ({ ...stick, length: usableStick(run.raceway, run.size, stick.length, bell) }));
}

/**
 * The pieces of runs in steps of the grid, to the nearest 1/16 in. as the schedule shows them (0.1 mm on that grid). A
 * cut piece takes the allowance of its raceway; a whole stick is not cut and takes none.
 */
export function lotPieces(works: readonly RowWork[], grid: CutGrid, rules: RuleBook): LabeledPiece[] {
  return works.flatMap(({ run, pieces, left }) => {
    const allowance = rules.number(stickRule("Cut allowance per piece", run.raceway));
    return pieces.flatMap((piece, index): LabeledPiece[] => {
      const length =
        run.stick - piece < WHOLE_STICK ? wholeSteps(run.stick, grid) : nearestSteps(piece + allowance, grid);
      const quantity = left?.[index] ?? run.quantity;
      return quantity === 0 ? [] : [{ length, quantity, run: run.name, piece: index + 1 }];
    });
  });
}

/** A whole stick, no longer than the stick itself is counted. */
const wholeSteps = (stick: number, grid: CutGrid): number => -roundUpToSteps(-stick, grid);

/** At least one: nothing is not cut. */
function nearestSteps(inches: number, grid: CutGrid): number {
  if (grid === "0.1 mm") return Math.max(1, Math.round(inches * 254));
  return Math.max(1, Math.round(inches * 16)) * (grid === "1/32" ? 2 : 1);
}
