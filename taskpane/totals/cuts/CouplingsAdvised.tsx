import { RUN_COLUMNS } from "../../../src/shop/run/runsTable";
import { adviceWords } from "../../../src/takeoff/couplings/adviceWords";
import { lengthsIn } from "../../../src/units/formatLength";
import { Notice } from "../../components/Notice";
import type { TableCells } from "../../excel";
import { useLedger } from "../../hooks/useLedger";
import { useUnits } from "../../hooks/useUnits";
import { useWorkbook } from "../../hooks/useWorkbook";
import { strings } from "../../strings";
import { columnPlaces } from "../../workbook/columns";
import type { LotPlan } from "./cutWork";
import { OneStep, type Written } from "./OneStep";

const t = strings.totals.cuts.couplings;

/** Couplings that would save sticks, at the job's own prices; on request they go into the runs' Joints cells. */
export function CouplingsAdvised({ lots, isStale }: { lots: readonly LotPlan[]; isStale: boolean }) {
  const workbook = useWorkbook();
  const { style } = useUnits();
  const { Runs } = useLedger().tables;
  const advised = lots.flatMap(({ title, advice }) => (advice ? [{ title, advice }] : []));
  const place = Runs && columnPlaces(Runs.cells[0] ?? [], RUN_COLUMNS).get("Joints");
  const offered = advised.length > 0;
  if (!Runs) return null;

  const write = async (column: number): Promise<Written> => {
    const joints = advised.flatMap(({ advice }) => advice.joints);
    const edits = joints.map(({ rowNumber, cell }) => ({ ...at(Runs, rowNumber - 1, column), cell }));
    const written = await workbook.replaceCells(edits, placesSeen(Runs, joints, [column]));
    await workbook.showColumns([at(Runs, 0, column)], true);
    return { replaced: written, seen: placesSeen(Runs, joints) };
  };
  return (
    <section aria-label={t.title} className="rl-stack">
      {advised.map(({ title, advice }) => (
        <Notice key={title} title={t.of(title)}>
          {adviceWords(advice, lengthsIn(style).tape)}
        </Notice>
      ))}
      {place === undefined ? (
        offered && <p className="rl-hint">{t.noColumn}</p>
      ) : (
        <OneStep name="totals.cuts.joints" words={t} offered={offered} isStale={isStale} write={() => write(place)} />
      )}
    </section>
  );
}

/** A cell of a table as it was read. */
const at = ({ cells, sheet, row, column }: TableCells, line: number, place: number) => ({
  ...{ sheet, row: row + line, column: column + place },
  value: cells[line]?.[place] ?? "",
});

/** The cells by which the rows of these runs are known again: name, route and what else is asked for. */
function placesSeen(table: TableCells, runs: readonly { rowNumber: number }[], more: readonly number[] = []) {
  const places = columnPlaces(table.cells[0] ?? [], RUN_COLUMNS);
  const own = [...["Run", "Route"].flatMap((name) => places.get(name) ?? []), ...more];
  return [0, ...runs.map(({ rowNumber }) => rowNumber - 1)].flatMap((line) =>
    own.map((place) => at(table, line, place)),
  );
}
