import { drawBend } from "../../src/drawing/bend/drawBend";
import type { BendMark } from "../../src/drawing/bend/bendShapes";
import type { BuiltRun } from "../../src/shop/run/builtRun";
import { widestRadius } from "./widestRadius";
import type { ScheduleRow } from "../../src/shop/schedule/schedule";
import { attempt } from "../components/attempt";
import { Drawing } from "../components/Drawing";
import { useWidth } from "../hooks/useWidth";
import { useUnits } from "../hooks/useUnits";
import { throughRun } from "../run/throughRun";
import type { BendChoice, Values } from "./kinds";

interface BendDrawingProps {
  kind: BendChoice;
  values: Values;
  built: BuiltRun;
  rows: readonly ScheduleRow[];
}

/** The bend from the side, to scale, as wide as the pane. */
export function BendDrawing({ kind, values, built, rows }: BendDrawingProps) {
  const units = useUnits();
  const [watch, width] = useWidth(296);
  const scene = attempt(() =>
    drawBend(
      {
        shape: kind.shape(values),
        radius: widestRadius(built),
        outsideDiameter: built.shoe.outsideDiameter,
        marks: marksOf(built, rows),
        firstStart: firstStart(built),
      },
      { width, show: units.show },
    ),
  );
  return <div ref={watch}>{scene.value && <Drawing scene={scene.value} />}</div>;
}

/** Where each piece begins along the straight conduit [in]. */
const pieceStarts = ({ pulls: [pull] }: BuiltRun): number[] => [0, ...(pull?.joints ?? [])];

/** Where the first bend begins along it [in]. */
function firstStart(built: BuiltRun): number {
  const pieces = built.pulls[0]?.pieces ?? [];
  const place = pieces.findIndex(({ bends }) => bends.length > 0);
  return (pieceStarts(built)[place] ?? 0) + (pieces[place]?.bends[0]?.start ?? 0);
}

/** The marks by the numbers of their bends through the run, each from the datum end of its own piece. */
function marksOf(built: BuiltRun, rows: readonly ScheduleRow[]): BendMark[] {
  const [pull] = built.pulls;
  // Between factory elbows there is nothing to mark along.
  if (!pull || pull.elbows.length > 0) return [];
  const starts = pieceStarts(built);
  const through = throughRun(rows);
  return rows
    .filter((row) => row.Mark !== "")
    .map((row) => {
      const [piece, distance] = [Number(row.Piece), Number(row.Mark)];
      return {
        distance: (starts[piece - 1] ?? 0) + distance,
        lineUp: row["Line up"] as BendMark["lineUp"],
        number: through.get(row)!,
        ...(pull.pieces.length > 1 && { piece: { number: piece, distance } }),
      };
    })
    .sort((one, other) => one.number - other.number);
}
