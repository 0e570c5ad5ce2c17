import { planCuts, stepsToInches, toSteps, type CutGrid } from "../../../src/cutting";
import type { Scene } from "../../../src/drawing/paper/scene";
import { drawCuts } from "../../../src/drawing/job/drawCuts";
import { toInches } from "../../../src/units/length";
import type { GuideCell } from "../tables";
import { showInches } from "./scenes";

const GRID: CutGrid = "1/32";
const STICK = 120;

/** The plan of an example's rows of length and quantity, drawn stick by stick. */
export function cutFigure(rows: readonly (readonly GuideCell[])[], kerf: number): Scene {
  const steps = (inches: number): number => toSteps(inches, GRID, "length");
  const inches = (length: number): number => stepsToInches(length, GRID);
  const pieces = rows.map(([length, quantity]) => {
    return { length: steps(toInches(length, "length")), quantity: Number(quantity) };
  });
  const plan = planCuts({
    ...{ pieces, stocks: [{ length: steps(STICK) }], grid: GRID },
    ...{ kerf: steps(kerf), minimumOffcut: steps(12) },
  });
  const sticks = plan.patterns.map(({ count, cuts, remnant }) => ({
    ...{ length: STICK, count, remnant: inches(remnant) },
    pieces: cuts.map((cut) => ({ ...cut, length: inches(cut.length) })),
  }));
  return drawCuts(sticks, { title: "The plan of the example", show: showInches, kerf });
}
