// Figures of the guide, drawn by the project's own drawing code at the width of a narrow page.
import type { BendDrawing } from "../../../src/drawing/bend/bendShapes";
import { drawBend } from "../../../src/drawing/bend/drawBend";
import { drawRun } from "../../../src/drawing/run/drawRun";
import type { RunPull } from "../../../src/drawing/run/runDrawing";
import { drawShoe } from "../../../src/drawing/bench/drawShoe";
import { drawStick } from "../../../src/drawing/bench/drawStick";
import type { RunView } from "../../../src/drawing/run/projection";
import type { Scene } from "../../../src/drawing/paper/scene";
import { stickOf, type StickRow } from "../../../src/drawing/bench/stick";
import type { LineUpSymbol } from "../../../src/drawing/paper/symbols";
import type { Path } from "../../../src/geometry/path";
import { buildOneRun } from "../../../src/shop/run/oneRun";
import { scheduleRun, scheduleTable } from "../../../src/shop/schedule/schedule";
import { arrowLead } from "../../../src/shop/shoe/shoe";

/** 1/2 EMT on a shoe that takes 5 in. off a stub: what the figures show where nothing else is said. */
export const HALF_EMT = { radius: 4, outsideDiameter: 0.706, deduct: 5 };

export const showInches = (inches: number): string => `${Number(inches.toFixed(3))} in.`;
const show = showInches;

/** A bend from the side, with its dimensions. */
export const bend = (shape: BendDrawing["shape"]): Scene => drawBend({ ...HALF_EMT, shape }, { show });

/** A mark, so far from where the first bend starts [in]. */
export interface FigureMark {
  readonly fromStart: number;
  readonly lineUp: LineUpSymbol;
}

/** From the arrow to where the bend starts [in]. */
export const ARROW_LEAD = arrowLead(HALF_EMT);

/** A bend with its marks; it starts `firstStart` [in] from the datum end. */
export function markedBend(shape: BendDrawing["shape"], firstStart: number, marks: readonly FigureMark[]): Scene {
  const drawn = marks.map(({ fromStart, lineUp }) => ({ distance: firstStart + fromStart, lineUp }));
  return drawBend({ ...HALF_EMT, shape, firstStart, marks: drawn }, { show });
}

export const shoe = (): Scene => drawShoe(HALF_EMT, { name: "1/2 EMT", show });

/** A run in 1/2 EMT from its route text. */
export function run(route: string, view: RunView): Scene {
  const built = buildOneRun(route, "EMT", "1/2", null);
  const pulls = built.pulls.map(({ pull, joints }): RunPull => ({ path: pathOf(pull), couplings: joints }));
  return drawRun({ name: route, pulls, outsideDiameter: built.shoe.outsideDiameter }, { view, show });
}

const pathOf = (pull: { points: Path["points"]; corners: readonly { radius: number }[] }): Path => {
  return { points: pull.points, radii: pull.corners.map(({ radius }) => radius) };
};

/** Conduit along corner points, box to box unless the pull says otherwise. */
export const conduit = (name: string, pull: RunPull, view: RunView): Scene =>
  drawRun({ name, pulls: [pull], outsideDiameter: HALF_EMT.outsideDiameter }, { view, show });

/** The first piece of a run in 1/2 EMT, straight, with its marks. */
export function stick(route: string): Scene {
  const [headers = [], ...rows] = scheduleTable(scheduleRun(buildOneRun(route, "EMT", "1/2", null)));
  const records = rows.map((row) => Object.fromEntries(headers.map((header, at) => [header, row[at]])));
  const piece = records.filter(({ Piece }) => Piece === 1) as unknown as [StickRow, ...StickRow[]];
  return drawStick(stickOf(piece), { show });
}
