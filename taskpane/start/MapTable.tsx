import { useState } from "react";
import { RUN_COLUMNS } from "../../src/shop/run/runsTable";
import { attempt } from "../components/attempt";
import { Choice } from "../components/Choice";
import { Notice } from "../components/Notice";
import { Section } from "../components/Section";
import { SheetButton } from "../components/SheetButton";
import { useTask } from "../hooks/useTask";
import { sameName, type TableInfo } from "../excel";
import { useLedger } from "../hooks/useLedger";
import { useWorkbook } from "../hooks/useWorkbook";
import { strings } from "../strings";
import { columnPlaces } from "../workbook/columns";
import { linkedRuns } from "../workbook/linkedRuns";
import { freeSheetName, lacking, tableName } from "../workbook/plan";
import type { SetUp } from "./useSetUp";

const t = strings.start.map;
const NONE = "-1";

/** Uses a table the person already keeps as Runs: as it is when its headers say so, else linked column by column. */
export function MapTable({ setUp }: { setUp: SetUp }) {
  const { contents, names } = setUp;
  const [chosen, setChosen] = useState("");
  const ours = Object.values(names ?? {});
  const tables = contents?.tables.filter(({ name }) => !ours.some((own) => sameName(own, name))) ?? [];
  const table = tables.find(({ name }) => name === chosen);
  return (
    <Section title={t.title}>
      {tables.length === 0 ? (
        <p className="rl-hint">{t.none}</p>
      ) : (
        <Choice
          label={t.which}
          value={chosen}
          options={[{ value: "", text: t.choose }, ...tables.map(({ name }) => ({ value: name, text: name }))]}
          onChange={setChosen}
        />
      )}
      {table && <MapColumns key={table.name} table={table} setUp={setUp} />}
    </Section>
  );
}

function MapColumns({ table, setUp }: { table: TableInfo; setUp: SetUp }) {
  const workbook = useWorkbook();
  const { reload } = useLedger();
  const task = useTask();
  const [done, setDone] = useState(false);
  const asItIs = lacking("Runs", table.headers).length === 0;
  const [columns, setColumns] = useState(() => guess(table.headers));
  const missing = RUN_COLUMNS.filter(({ name, required }) => required && columns[name] === undefined);

  const useIt = async () => {
    const sheet = freeSheetName("Runs", await workbook.readContents());
    const names = { ...(await workbook.readNames()), Runs: asItIs ? table.name : tableName(sheet) };
    if (asItIs) await workbook.writeNames(names);
    else if (setUp.wishes) {
      const { wishes } = setUp;
      const [source] = await workbook.readTables([table.name]);
      if (!source) throw new Error(t.gone(table.name));
      await workbook.setUp(
        linkedRuns(source, columns, {
          ...wishes,
          sheets: { ...wishes.sheets, Runs: sheet },
          tables: { ...wishes.tables, Runs: { ...wishes.tables.Runs, name: names.Runs } },
        }),
        { settings: workbook.namesSetting(names) },
      );
    }
    await reload();
    await setUp.look();
    setDone(true);
  };

  if (done) return <Notice intent="success">{asItIs ? t.usedAsIs(table.name) : t.linked(table.name)}</Notice>;
  return (
    <>
      <p>{asItIs ? t.asItIs : t.pick}</p>
      {!asItIs && (
        <div className="rl-grid">
          {RUN_COLUMNS.map(({ name, required }) => (
            <Choice
              key={name}
              label={required ? t.needed(name) : name}
              value={String(columns[name] ?? NONE)}
              options={[
                { value: NONE, text: t.noColumn },
                ...table.headers.map((header, place) => ({ value: String(place), text: header })),
              ]}
              onChange={(value) =>
                setColumns(({ [name]: _, ...rest }) => (value === NONE ? rest : { ...rest, [name]: Number(value) }))
              }
            />
          ))}
        </div>
      )}
      {missing.length > 0 && !asItIs && (
        <p className="rl-hint">{t.missing(missing.map(({ name }) => name).join(", "))}</p>
      )}
      <SheetButton
        appearance="primary"
        disabledFocusable={task.busy || (!asItIs && missing.length > 0)}
        onClick={() => void task.run(useIt)}
      >
        {t.button(table.name)}
      </SheetButton>
      {task.problem && <Notice intent="error">{task.problem}</Notice>}
    </>
  );
}

const guess = (headers: readonly string[]): Record<string, number> =>
  Object.fromEntries(attempt(() => columnPlaces(headers, RUN_COLUMNS)).value ?? []);
