/** Numbers of marks and the words at the datum end, in the pane's bends as they first stand there: nothing lies on them. */
import { drawBend } from "../../../src/drawing/bend/drawBend";
import { around, clipLine } from "../../../src/drawing/paper/boxes";
import type { Box, LineItem, Scene } from "../../../src/drawing/paper/scene";
import { scheduleRun } from "../../../src/shop/schedule/schedule";
import { buildOneRun } from "../../../src/shop/run/oneRun";
import { formatLength } from "../../../src/units/formatLength";
import { BEND_KINDS, type BendChoice } from "../../../taskpane/bend/kinds";
import { readFields, routeSteps } from "../../../taskpane/bend/readFields";

function draw(kind: BendChoice, width: number): Scene {
  const { values } = readFields(kind, {}, (text) => text);
  const built = buildOneRun(routeSteps(kind, values!).join(", "), "EMT", "1/2", undefined);
  const marks = scheduleRun(built).flatMap((row) =>
    row.Mark === "" ? [] : [{ distance: Number(row.Mark), lineUp: "arrow" as const, number: Number(row.Bend) }],
  );
  const { radius, outsideDiameter } = built.shoe;
  const firstStart = built.pulls[0]!.pieces[0]!.bends[0]!.start;
  const show = (inches: number) => formatLength(inches, 16, "feet");
  return drawBend({ shape: kind.shape(values!), radius, outsideDiameter, marks, firstStart }, { width, show });
}

/** Boxes that nothing may cross, with what they hold: each number's circle, and the words. */
function kept({ items }: Scene): [words: string, box: Box][] {
  return items.flatMap((item): [string, Box][] => {
    if (item.kind === "text" && item.text === "datum end") return [[item.text, item.box]];
    if (item.kind !== "circle" || item.style !== "shape") return [];
    const [[x, y], half] = [item.center, item.radius * 0.7];
    return [["a number", around([[x - half, y - half], [x + half, y + half]])]]; // prettier-ignore
  });
}

const crosses = ({ points }: LineItem, box: Box): boolean =>
  points.some((to, place) => place > 0 && clipLine(points[place - 1]!, to, box) !== undefined);

const dimensions = ({ items }: Scene) =>
  items.filter((item): item is LineItem => item.kind === "line" && /^(dimension|extension|solid)$/.test(item.style));

test.each(BEND_KINDS.flatMap((kind) => [296, 420].map((width) => [kind.title, width, kind] as const)))(
  "%s, %i px wide",
  (_, width, kind) => {
    const scene = draw(kind, width);
    const boxes = kept(scene);
    expect(boxes.length).toBeGreaterThan(1);
    const struck = boxes.filter(([, box]) => dimensions(scene).some((line) => crosses(line, box)));
    expect(struck.map(([words]) => words)).toEqual([]);
  },
);
