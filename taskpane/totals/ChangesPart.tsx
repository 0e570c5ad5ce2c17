import { Field, Input } from "@fluentui/react-components";
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
import { PricedChange } from "./PricedChange";
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
  const [before, setBefore] = useState<Before>();
  const [name, setName] = useState("");

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
      () => workbook.readTables([latest.table, ...(latest.counts ? [latest.counts] : [])]),
      ([runs, counts]) => setBefore(runs && { runs, counts }),
    );
  }, [workbook, latest, tables]);

  const take = async () => {
    if (!tables.Runs) return;
    const taken = new Date();
    const contents = await workbook.readContents();
    const called = name.trim();
    const title = called || taken.toISOString().slice(0, 10);
    const made = snapshotTable(tables.Runs, contents, `Runs ${title}`);
    const counts = tables.Counts && snapshotTable(tables.Counts, contents, `Counts ${title}`);
    const snapshot: Snapshot = {
      ...{ table: made.table, taken: taken.toISOString() },
      ...(counts && { counts: counts.table }),
      ...(called !== "" && { name: called }),
    };
    const next = [...snapshots, snapshot];
    await workbook.setUp([made, ...(counts ? [counts] : [])], { settings: { [SNAPSHOTS]: next }, stay: true });
    setSnapshots(next);
    setChosen(made.table);
    setName("");
  };

  return (
    <Section title={t.title}>
      <p>{t.about}</p>
      <Field label={t.name} hint={t.nameHint}>
        <Input value={name} maxLength={18} onChange={(_, { value }) => setName(value)} />
      </Field>
      <SheetButton disabledFocusable={task.busy} onClick={() => void task.run(take)}>
        {t.button}
      </SheetButton>
      {task.problem && <Notice intent="error">{task.problem}</Notice>}
      {snapshots.length > 1 && (
        <Choice
          label={t.since}
          value={latest?.table ?? ""}
          options={[...snapshots].reverse().map((each) => ({ value: each.table, text: called(each) }))}
          onChange={setChosen}
        />
      )}
      {latest && before && <Changed snapshot={latest} before={before} />}
      {latest && !before && <p className="rl-hint">{t.gone(latest.table)}</p>}
    </Section>
  );
}

/** The tables of a snapshot. */
interface Before {
  runs: TableCells;
  counts: TableCells | undefined;
}

function Changed({ snapshot, before }: { snapshot: Snapshot; before: Before }) {
  const { tables } = useLedger();
  const found = useMemo(
    () =>
      attempt(() => recordsOf(changes(before.runs.cells, tables.Runs?.cells, orderSince(orderTables(tables), before)))),
    [before, tables],
  );
  if (!found.value) return <Notice intent="error">{found.problem}</Notice>;
  const runs = found.value.filter(({ Change }) => Change !== "quantity");
  const items = found.value.filter(
    ({ Change, Difference }) => Change === "quantity" && Math.abs(Number(Difference)) > 1e-9,
  );
  if (runs.length + items.length === 0) return <Notice intent="success">{t.nothing(called(snapshot))}</Notice>;
  return (
    <>
      <p>{t.found(called(snapshot))}</p>
      <PricedChange before={before} />
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

/** A snapshot by its name, or by when it was taken. */
const called = ({ name, taken }: Snapshot): string => (name ? `${name}, ${when(taken)}` : when(taken));

/** An older snapshot keeps the runs alone: what hangs on none has no state before, and is left out. */
const orderSince = ({ counts, ...order }: OrderTables, before: Before) =>
  before.counts ? { ...order, counts, countsBefore: before.counts.cells } : order;
