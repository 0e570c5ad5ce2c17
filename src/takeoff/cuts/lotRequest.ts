import { roundUpToSteps, showSteps, stepsToInches, toSteps, type CutGrid, type CutRequest } from "../../cutting";
import { remember } from "../../memory/remember";
import { nominalStick } from "../../raceway/sticks";
import { gridFor } from "./cutGrid";
import type { LabeledPiece } from "../saw/cutLabels";
import { lotPieces, type CutLot } from "./cutLots";
import type { CutView } from "./cutSheet";
import { isPriced, stocksOf, type Stick } from "./cutStock";
import type { RuleBook } from "../../rules/rules";
import { lengthsOf } from "../../rules/lengthsRule";
import type { Lengths } from "../../units/formatLength";
import type { Saw } from "../saw/saw";

/** What the solver is asked for one raceway and size, and what its answer is written with. */
export interface LotRequest {
  readonly request: CutRequest;
  readonly pieces: readonly LabeledPiece[];
  readonly view: Omit<CutView, "labels" | "drops">;
}

/** @throws InputError when a length does not fit the saw's grid */
export const lotRequest: (lot: CutLot, saw: Saw, rules: RuleBook) => LotRequest = remember((lot, saw, rules) => {
  const grid = gridFor([...lot.sticks.filter((stick) => !isNamed(lot, stick)).map(({ length }) => length), saw.kerf]);
  const sticks = lot.sticks.map((stick) => (isNamed(lot, stick) ? onGrid(stick, grid) : stick));
  const pieces = lotPieces(lot.works, grid, rules);
  const keep = roundUpToSteps(saw.keep, grid);
  const kerf = toSteps(saw.kerf, grid, "kerf");
  return {
    request: { pieces, stocks: stocksOf(sticks, grid), grid, kerf, minimumOffcut: keep },
    pieces,
    view: { grid, keep, told: toldIn(lengthsOf(rules), grid), priced: isPriced(lot.sticks) },
  };
});

/** How a saw operator is told lengths: exactly, where nobody says in what unit. */
const toldIn =
  ({ unit, tape }: Lengths, grid: CutGrid) =>
  (steps: number): string =>
    unit === "as written" ? showSteps(steps, grid) : tape(stepsToInches(steps, grid));

/** True for a threaded stick that was written by the length it is called: what its pipe measures nobody wrote. */
const isNamed = ({ raceway, size }: CutLot, { length }: Stick): boolean =>
  nominalStick(raceway, size, length) !== length;

/** Such a stick on the grid of what was written: beside millimeters it counts as less than 0.1 mm shorter. */
const onGrid = (stick: Stick, grid: CutGrid): Stick => ({
  ...stick,
  length: stepsToInches(-roundUpToSteps(-stick.length, grid), grid),
});
