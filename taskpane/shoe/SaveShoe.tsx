import { useState } from "react";
import type { Calibrated } from "../../src/bends/testBends/calibrate";
import type { Raceway } from "../../src/raceway/raceway";
import type { TradeSize } from "../../src/raceway/tradeSize";
import { Notice } from "../components/Notice";
import { SheetButton } from "../components/SheetButton";
import { useTask } from "../hooks/useTask";
import type { Replaced, Seen } from "../excel";
import { useLedger } from "../hooks/useLedger";
import { useWorkbook } from "../hooks/useWorkbook";
import { strings } from "../strings";
import { appendRows } from "../workbook/appendRows";
import { namedTables } from "../workbook/namedTables";
import type { MeasuredSpringback } from "./measures";
import { measuredCells, measuredPlaces, missingColumns, shoeRowOf } from "./shoeRow";

const t = strings.shoe.save;

/** Writes what was measured into the shoe's row of the Shoes table, and can put back what stood there. */
export function SaveShoe({
  raceway,
  size,
  lines,
  springback,
}: {
  raceway: Raceway;
  size: TradeSize;
  lines: readonly Calibrated[];
  springback: MeasuredSpringback;
}) {
  const workbook = useWorkbook();
  const { tables, names, reload } = useLedger();
  const task = useTask();
  const [saved, setSaved] = useState<{ replaced: Replaced[]; seen: Seen[] }>();
  const table = tables.Shoes;
  if (!table) return <Notice intent="warning">{t.noTable}</Notice>;
  const headers = table.cells[0] ?? [];
  const row = shoeRowOf(table.cells, raceway, size);
  const measured = measuredCells(lines, springback, dayOf(new Date()));
  const missing = missingColumns(headers, measured);

  const save = async () => {
    const at = (line: number, place: number) => ({
      ...{ sheet: table.sheet, row: table.row + line, column: table.column + place },
      value: table.cells[line]?.[place] ?? "",
    });
    try {
      if (row === 0) {
        const cells = measuredPlaces(headers, { Raceway: raceway, Size: size, ...measured });
        const given = Object.fromEntries(cells.map(({ place, cell }) => [String(headers[place]), cell]));
        const line = await appendRows(workbook, "Shoes", table, [given], namedTables(names, tables));
        const [now] = await workbook.readTables([table.name]);
        const replaced = cells.map(({ place }): Replaced => {
          const { sheet, row: at, column } = now ?? table;
          return { sheet, row: at + line, column: column + place, before: "", after: now?.cells[line]?.[place] ?? "" };
        });
        setSaved({ replaced, seen: cells.map(({ place }) => at(0, place)) });
      } else {
        const key = measuredPlaces(headers, { Raceway: raceway, Size: size }).map(({ place }) => place);
        const cells = measuredPlaces(headers, measured);
        const seen = [...cells.map(({ place }) => at(0, place)), ...key.map((place) => at(row, place))];
        const replaced = await workbook.replaceCells(
          cells.map(({ place, cell }) => ({ ...at(row, place), cell })),
          [...seen, ...cells.map(({ place }) => at(row, place))],
        );
        setSaved({ replaced, seen });
      }
    } finally {
      await reload();
    }
  };
  const takeBack = async ({ replaced, seen }: { replaced: Replaced[]; seen: Seen[] }) => {
    await workbook.putBack(replaced, seen);
    setSaved(undefined);
    await reload();
  };

  return (
    <div className="rl-stack">
      <SheetButton appearance="primary" disabledFocusable={task.busy} onClick={() => void task.run(save)}>
        {row === 0 ? t.add(`${raceway} ${size}`) : t.replace(`${raceway} ${size}`)}
      </SheetButton>
      {missing.length > 0 && <Notice intent="warning">{t.noColumns(missing.join(", "))}</Notice>}
      {task.problem && <Notice intent="error">{task.problem}</Notice>}
      {saved && (
        <Notice
          intent="success"
          actions={
            <SheetButton size="small" onClick={() => void task.run(() => takeBack(saved))}>
              {strings.bend.put.takeBack}
            </SheetButton>
          }
        >
          {t.done}
        </Notice>
      )}
    </div>
  );
}

/** A day where the pane is, as the Shoes table holds it: 2026-11-02. */
const dayOf = (now: Date): string =>
  [now.getFullYear(), now.getMonth() + 1, now.getDate()].map((part) => String(part).padStart(2, "0")).join("-");
