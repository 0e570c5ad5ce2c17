import { Button } from "@fluentui/react-components";
import { RUN_COLUMNS } from "../../src/shop/run/runsTable";
import type { TableCells } from "../excel";
import { Notice } from "../components/Notice";
import { useLedger } from "../hooks/useLedger";
import { useTask } from "../hooks/useTask";
import { useWorkbook } from "../hooks/useWorkbook";
import { strings } from "../strings";
import { columnPlaces } from "../workbook/columns";
import { SELDOM } from "../workbook/design/sheets";

const t = strings.run.columns;

/** Shows the columns of Runs that few jobs need, and hides those of them again in which nothing stands. */
export function MoreColumns() {
  const workbook = useWorkbook();
  const { tables, mustBeFresh } = useLedger();
  const task = useTask();
  const runs = tables.Runs;
  if (!runs) return null;
  const show = (shown: boolean) =>
    task.run(async () => {
      mustBeFresh();
      // What was typed last may be newer than what the pane has read: no column with something in it is hidden.
      const [now] = await workbook.readTables([runs.name]);
      await workbook.showColumns(seldomPlaces(now ?? runs, shown), shown);
    });
  return (
    <>
      <div className="rl-row">
        <Button size="small" title={SELDOM.join(", ")} disabledFocusable={task.busy} onClick={() => void show(true)}>
          {t.more}
        </Button>
        <Button size="small" disabledFocusable={task.busy} onClick={() => void show(false)}>
          {t.fewer}
        </Button>
      </div>
      {task.problem && <Notice intent="error">{task.problem}</Notice>}
    </>
  );
}

/** Where such columns stand that the table has; without those that hold something, where they are to be hidden. */
function seldomPlaces({ cells, sheet, row, column }: TableCells, withFilled: boolean) {
  const places = columnPlaces(cells[0] ?? [], RUN_COLUMNS);
  const isFilled = (place: number) => cells.slice(1).some((line) => (line[place] ?? "") !== "");
  return SELDOM.flatMap((name) => {
    const place = places.get(name);
    return place === undefined || (!withFilled && isFilled(place)) ? [] : [{ sheet, row, column: column + place }];
  });
}
