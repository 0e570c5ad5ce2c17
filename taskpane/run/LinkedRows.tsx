import { useEffect, useState } from "react";
import { RUN_COLUMNS } from "../../src/shop/run/runsTable";
import { attempt } from "../components/attempt";
import { Notice } from "../components/Notice";
import { SheetButton } from "../components/SheetButton";
import type { Linked, TableCells } from "../excel";
import { untilRead } from "../hooks/untilRead";
import { useLedger } from "../hooks/useLedger";
import { useTask } from "../hooks/useTask";
import { useWorkbook } from "../hooks/useWorkbook";
import { strings } from "../strings";
import { rowSeen } from "../workbook/appendRows";
import { columnPlaces } from "../workbook/columns";
import { moreLinkedRows } from "../workbook/linkedRuns";

const t = strings.start.map;

/** Says which rows of another table a Runs table that shows it has no rows for, with the way to take them in. */
export function LinkedRows() {
  const workbook = useWorkbook();
  const { tables, reload, mustBeFresh } = useLedger();
  const task = useTask();
  const [linked, setLinked] = useState<Linked>();
  const runs = tables.Runs;
  const isFull = runs !== undefined && saysFull(runs);
  useEffect(() => {
    if (!runs || !isFull) return setLinked(undefined);
    return untilRead(() => workbook.readLinked(runs), setLinked);
  }, [workbook, runs, isFull]);
  if (!runs || !linked || linked.lacks === 0) return null;
  const count = runs.cells.length - 1;
  const takeIn = () =>
    task.run(async () => {
      mustBeFresh();
      const { last, rows } = moreLinkedRows(linked, count, (column) => column === nameColumn(runs));
      await workbook.addRows(runs.name, rows);
      const place = { sheet: runs.sheet, row: runs.row + count, column: runs.column };
      await workbook.writeCells(place, [last], [...rowSeen(runs, 0), ...rowSeen(runs, count)]);
      await reload();
    });
  return (
    <Notice
      intent="warning"
      title={t.lacks(linked.lacks, linked.source)}
      actions={
        <SheetButton size="small" appearance="primary" disabledFocusable={task.busy} onClick={() => void takeIn()}>
          {strings.leftOut.takeIn}
        </SheetButton>
      }
    >
      {task.problem || t.lacksRows(count + 1, count + linked.lacks)}
    </Notice>
  );
}

const nameColumn = ({ cells }: TableCells): number | undefined =>
  attempt(() => columnPlaces(cells[0] ?? [], RUN_COLUMNS)).value?.get("Run");

/** True where the last row says that there is more than it shows. */
const saysFull = (runs: TableCells): boolean => {
  const name = String(runs.cells.at(-1)?.[nameColumn(runs) ?? -1] ?? "");
  return name !== "" && name.endsWith(t.full(""));
};
