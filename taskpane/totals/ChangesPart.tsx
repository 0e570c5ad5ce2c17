import { useEffect, useMemo, useState } from "react";
import { changes } from "../../src/takeoff/reports/changes";
import { show } from "../../src/units/show";
import { attempt } from "../components/attempt";
import { Choice } from "../components/Choice";
import { Notice } from "../components/Notice";
import { Section } from "../components/Section";
import { SheetButton } from "../components/SheetButton";
import { useTask } from "../hooks/useTask";
import type { TableCells } from "../excel";
import { useLedger } from "../hooks/useLedger";
import { untilRead } from "../hooks/untilRead";
import { useWorkbook } from "../hooks/useWorkbook";
import { strings } from "../strings";
import { recordsOf } from "../workbook/recordsOf";
import { RowLinks } from "./RowLinks";
import { orderTables, type OrderTables } from "./orderTables";
import { readSnapshots, snapshotTable, SNAPSHOTS, type Snapshot } from "./snapshots";

const t = strings.totals.changes;

/** Keeps the runs as they are now, and tells what has changed since. */
export function ChangesPart() {
  const workbook = useWorkbook();
  const { tables } = useLedger();
  const task = useTask();
  const [snapshots, setSnapshots] = useState<Snapshot[]>([]);
  const [chosen, setChosen] = useState("");
  const [before, setBefore] = useState<TableCells>();

  useEffect(
    () =>
      untilRead(
        () => workbook.readSettings([SNAPSHOTS]),
        ([stored]) => setSnapshots(readSnapshots(stored)),
      ),
    [workbook],
  );
  const latest = snapshots.find(({ table }) => table === chosen) ?? snapshots.at(-1);
  useEffect(() => {
    setBefore(undefined);
    if (!latest) return;
    return untilRead(
      () => workbook.readTables([latest.table]),
      ([cells]) => setBefore(cells),
    );
  }, [workbook, latest, tables]);

  const take = async () => {
    if (!tables.Runs) return;
    const taken = new Date();
    const made = snapshotTable(tables.Runs, await workbook.readContents(), taken.toISOString().slice(0, 10));
    const next = [...snapshots, { table: made.table, taken: taken.toISOString() }];
    await workbook.setUp([made], { settings: { [SNAPSHOTS]: next } });
    setSnapshots(next);
    setChosen(made.table);
  };

  return (
    <Section title={t.title}>
      <p>{t.about}</p>
      <SheetButton disabledFocusable={task.busy} onClick={() => void task.run(take)}>
        {t.button}
      </SheetButton>
      {task.problem && <Notice intent="error">{task.problem}</Notice>}
      {snapshots.length > 1 && (
        <Choice
          label={t.since}
          value={latest?.table ?? ""}
          options={[...snapshots].reverse().map(({ table, taken }) => ({ value: table, text: when(taken) }))}
          onChange={setChosen}
        />
      )}
      {latest && before && <Changed snapshot={latest} before={before} />}
      {latest && !before && <p className="rl-hint">{t.gone(latest.table)}</p>}
    </Section>
  );
}

function Changed({ snapshot, before }: { snapshot: Snapshot; before: TableCells }) {
  const { tables } = useLedger();
  const found = useMemo(
    () => attempt(() => recordsOf(changes(before.cells, tables.Runs?.cells, runsAlone(orderTables(tables))))),
    [before, tables],
  );
  if (!found.value) return <Notice intent="error">{found.problem}</Notice>;
  const runs = found.value.filter(({ Change }) => Change !== "quantity");
  const items = found.value.filter(
    ({ Change, Difference }) => Change === "quantity" && Math.abs(Number(Difference)) > 1e-9,
  );
  if (runs.length + items.length === 0) return <Notice intent="success">{t.nothing(when(snapshot.taken))}</Notice>;
  return (
    <>
      <p>{t.found(when(snapshot.taken))}</p>
      <ul className="rl-behind">
        {runs.map((row, index) => (
          <li key={index}>
            {row.Change} <RowLinks names={[String(row["Run or item"])]} />
            {row.Change === "not counted" && (
              <span>{` ${t.notCounted(String(row["Column or unit"]), String(row.Before))}`}</span>
            )}
            {row.Change !== "not counted" && row["Column or unit"] !== "" && (
              <span>{` ${t.cell(String(row["Column or unit"]), String(row.Before), String(row.After))}`}</span>
            )}
          </li>
        ))}
      </ul>
      {items.length > 0 && (
        <table className="rl-table">
          <thead>
            <tr>
              <th scope="col">{t.item}</th>
              <th scope="col" className="rl-number">
                {t.was}
              </th>
              <th scope="col" className="rl-number">
                {t.is}
              </th>
              <th scope="col" className="rl-number">
                {t.difference}
              </th>
            </tr>
          </thead>
          <tbody>
            {items.map((row, index) => (
              <tr key={index}>
                <th scope="row">{`${row["Run or item"]} [${row["Column or unit"]}]`}</th>
                <td className="rl-number">{show(Number(row.Before), 1)}</td>
                <td className="rl-number">{show(Number(row.After), 1)}</td>
                <td className="rl-number">{signed(Number(row.Difference))}</td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
    </>
  );
}

const signed = (value: number): string => `${value > 0 ? "+" : ""}${show(value, 1)}`;

const when = (iso: string): string =>
  new Date(iso).toLocaleString(undefined, { dateStyle: "medium", timeStyle: "short" });

/** A snapshot keeps the runs: what hangs on none has no state before. */
const runsAlone = ({ counts: _, ...order }: OrderTables): Omit<OrderTables, "counts"> => order;
