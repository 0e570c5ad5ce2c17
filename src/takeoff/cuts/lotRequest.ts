import { roundUpToSteps, toSteps, type CutRequest } from "../../cutting";
import { gridFor } from "./cutGrid";
import type { LabeledPiece } from "../saw/cutLabels";
import { lotPieces, type CutLot } from "./cutLots";
import type { CutView } from "./cutSheet";
import { isPriced, stocksOf } from "./cutStock";
import type { RuleBook } from "../../rules/rules";
import type { Saw } from "../saw/saw";

/** What the solver is asked for one raceway and size, and what its answer is written with. */
export interface LotRequest {
  readonly request: CutRequest;
  readonly pieces: readonly LabeledPiece[];
  readonly view: Omit<CutView, "labels" | "drops">;
}

/** @throws InputError when a length does not fit the saw's grid */
export function lotRequest(lot: CutLot, saw: Saw, rules: RuleBook): LotRequest {
  const grid = gridFor([...lot.sticks.map(({ length }) => length), saw.kerf]);
  const pieces = lotPieces(lot.works, grid, rules);
  const keep = roundUpToSteps(saw.keep, grid);
  const kerf = toSteps(saw.kerf, grid, "kerf");
  return {
    request: { pieces, stocks: stocksOf(lot.sticks, grid), grid, kerf, minimumOffcut: keep },
    pieces,
    view: { grid, keep, priced: isPriced(lot.sticks) },
  };
}
