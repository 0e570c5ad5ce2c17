import { drawBend } from "../../src/drawing/bend/drawBend";
import type { BuiltRun } from "../../src/shop/run/builtRun";
import { widestRadius } from "./widestRadius";
import type { ScheduleRow } from "../../src/shop/schedule/schedule";
import { attempt } from "../components/attempt";
import { Drawing } from "../components/Drawing";
import { useWidth } from "../components/useWidth";
import { useUnits } from "../hooks/useUnits";
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
  const pieces = built.pulls.flatMap((pull) => pull.pieces);
  // Marks are counted from the end of a piece: with a coupling in between, the schedule below shows them instead.
  const marks = pieces.length > 1 ? [] : rows.filter((row) => row.Mark !== "");
  const scene = attempt(() =>
    drawBend(
      {
        shape: kind.shape(values),
        radius: widestRadius(built),
        outsideDiameter: built.shoe.outsideDiameter,
        marks: marks.map((row) => ({
          distance: Number(row.Mark),
          lineUp: row["Line up"] as "arrow" | "star" | "notch",
        })),
        firstStart: pieces[0]?.bends[0]?.start ?? 0,
      },
      { width, show: units.show },
    ),
  );
  return <div ref={watch}>{scene.value && <Drawing scene={scene.value} />}</div>;
}
