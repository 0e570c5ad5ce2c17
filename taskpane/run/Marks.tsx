import { drawStick } from "../../src/drawing/bench/drawStick";
import { stickOf } from "../../src/drawing/bench/stick";
import { isElbowRow, type ScheduleRow } from "../../src/shop/schedule/schedule";
import { showDegrees } from "../../src/units/show";
import { Drawing } from "../components/Drawing";
import { useWidth } from "../hooks/useWidth";
import { useUnits } from "../hooks/useUnits";
import { strings } from "../strings";
import { throughRun } from "./throughRun";

const t = strings.run.marks;

/**
 * The schedule of a run in its order: of each piece what to cut, where to mark, what to line up and how to turn; of each
 * factory elbow how it points.
 */
export function Marks({ rows }: { rows: readonly ScheduleRow[] }) {
  const through = throughRun(rows);
  return (
    <>
      {rows.map((row, index) => {
        if (isElbowRow(row)) return <Elbow key={index} row={row} number={through.get(row)!} />;
        if (row.Piece === rows[index - 1]?.Piece) return null;
        return <Piece key={index} rows={rows.filter(({ Piece }) => Piece === row.Piece)} through={through} />;
      })}
    </>
  );
}

function Elbow({ row, number }: { row: ScheduleRow; number: number }) {
  return (
    <div className="rl-card">
      <h4>{t.elbow(showDegrees(Number(row.Angle)), number)}</h4>
      <p>{row.Turn}</p>
      <div className="rl-hint">{row.Note}</div>
    </div>
  );
}

function Piece({ rows, through }: { rows: readonly ScheduleRow[]; through: ReadonlyMap<ScheduleRow, number> }) {
  const units = useUnits();
  const [watch, width] = useWidth(270);
  const first = rows[0];
  if (!first) return null;
  const bends = rows.filter((row) => row.Mark !== "");
  const stick = bends.length > 0 ? stickOf([first, ...rows.slice(1)]) : undefined;
  return (
    <div className="rl-card">
      <h4>{t.piece(String(first.Piece), units.show(Number(first["Cut length"])))}</h4>
      {bends.length === 0 && <p>{t.straight}</p>}
      <div ref={watch}>{stick && <Drawing scene={drawStick(stick, { width, show: units.show })} />}</div>
      <ol className="rl-bends">
        {bends.map((row, index) => (
          <li key={index}>
            <strong>{t.mark(units.show(Number(row.Mark)))}</strong>{" "}
            {t.setting(String(row["Line up"]), String(row.Hook), dialText(row.Dial))}
            <br />
            {t.bend(
              numbersOf(row, through.get(row)!),
              showDegrees(Number(row.Angle)),
              String(row.Kind),
              String(row.Turn),
            )}
            {row.Note !== "" && <div className="rl-hint">{row.Note}</div>}
          </li>
        ))}
      </ol>
      {bends.length === 0 && first.Note !== "" && <div className="rl-hint">{first.Note}</div>}
    </div>
  );
}

/** The number of a bend along the piece, as in its picture, where it is not the step's; and in the run, where it is another. */
const numbersOf = ({ Bend, Step }: ScheduleRow, inRun: number): string =>
  `${Bend === Step ? "" : t.which(Number(Bend))}${Bend === inRun ? "" : t.inRun(inRun)}`;

const dialText = (dial: string | number): string => (typeof dial === "number" ? showDegrees(dial) : dial);
