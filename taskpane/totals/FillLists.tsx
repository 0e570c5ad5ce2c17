import { Button } from "@fluentui/react-components";
import { useMemo, useState } from "react";
import { findMissing, type ListName, type Missing } from "../../src/takeoff/reports/missing";
import { attempt } from "../components/attempt";
import { Notice } from "../components/Notice";
import { useTask } from "../hooks/useTask";
import { useLedger } from "../hooks/useLedger";
import { useWorkbook } from "../hooks/useWorkbook";
import { strings } from "../strings";
import { appendRows } from "../workbook/appendRows";
import type { Rows } from "../workbook/design/startRows";
import { namedTables } from "../workbook/namedTables";
import { plainText } from "../workbook/plainText";
import { orderTables } from "./orderTables";

const t = strings.totals.fill;
const LISTS: readonly ListName[] = ["Prices", "Labor"];

/** Puts what the job needs and the lists lack into Prices and Labor, each a row that waits for its number. */
export function FillLists() {
  const workbook = useWorkbook();
  const { tables, names } = useLedger();
  const task = useTask();
  const [done, setDone] = useState("");
  const found = useMemo(() => attempt(() => findMissing(tables.Runs?.cells, orderTables(tables))).value, [tables]);
  if (!found) return null;
  const toAdd = (list: ListName) => found.lacking.filter((entry) => entry.list === list && !entry.listed);
  const lists = LISTS.filter((list) => tables[list] && toAdd(list).length > 0);
  const doubtful = LISTS.flatMap((list) =>
    found.unused[list].flatMap((row) => (row.meant ? [t.meant(list, row.name, row.meant)] : [])),
  );
  const fill = async () => {
    setDone("");
    for (const list of lists) {
      await appendRows(workbook, list, tables[list]!, toAdd(list).map(rowOf), namedTables(names, tables));
    }
    setDone(t.done(lists.map((list) => t.rows(toAdd(list).length, list))));
  };
  return (
    <>
      {lists.length > 0 && (
        <>
          <p className="rl-hint">{t.about(lists.map((list) => t.rows(toAdd(list).length, list)))}</p>
          <Button disabledFocusable={task.busy} onClick={() => void task.run(fill)}>
            {t.button}
          </Button>
        </>
      )}
      {done !== "" && <Notice intent="success">{done}</Notice>}
      {task.problem && <Notice intent="error">{task.problem}</Notice>}
      {doubtful.map((words) => (
        <Notice key={words} intent="warning">
          {words}
        </Notice>
      ))}
    </>
  );
}

const rowOf = ({ list, name, unit }: Missing): Rows[number] =>
  list === "Prices" ? { Item: plainText(name), Unit: unit } : { Operation: plainText(name) };
