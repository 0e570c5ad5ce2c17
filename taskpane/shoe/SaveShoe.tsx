import { Button } from "@fluentui/react-components";
import { useState } from "react";
import type { Calibrated } from "../../src/bends/testBends/calibrate";
import type { Raceway } from "../../src/raceway/raceway";
import type { TradeSize } from "../../src/raceway/tradeSize";
import { Notice } from "../components/Notice";
import { useTask } from "../components/useTask";
import type { Place } from "../excel";
import { useLedger } from "../hooks/useLedger";
import { useWorkbook } from "../hooks/useWorkbook";
import { strings } from "../strings";
import type { Cell } from "../workbook/items";
import type { MeasuredSpringback } from "./measures";
import { measuredCells, missingColumns, shoeRowOf, withMeasured } from "./shoeRow";

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
  const { tables, reload } = useLedger();
  const task = useTask();
  const [before, setBefore] = useState<{ place: Place; cells: Cell[] } | "new">();
  const table = tables.Shoes;
  if (!table) return <Notice intent="warning">{t.noTable}</Notice>;
  const headers = table.cells[0] ?? [];
  const row = shoeRowOf(table.cells, raceway, size);
  const measured = measuredCells(lines, springback, dayOf(new Date()));
  const missing = missingColumns(headers, measured);

  const save = async () => {
    if (row === 0) {
      await workbook.addRows(table.name, [withMeasured(headers, [], { Raceway: raceway, Size: size, ...measured })]);
      setBefore("new");
    } else {
      const place = { sheet: table.sheet, row: table.row + row, column: table.column };
      const cells = table.cells[row] ?? [];
      await workbook.writeCells(place, [withMeasured(headers, cells, measured)]);
      setBefore({ place, cells: [...cells] });
    }
    await reload();
  };
  const takeBack = async (old: { place: Place; cells: Cell[] }) => {
    await workbook.writeCells(old.place, [old.cells]);
    setBefore(undefined);
    await reload();
  };

  return (
    <div className="rl-stack">
      <Button appearance="primary" disabledFocusable={task.busy} onClick={() => void task.run(save)}>
        {row === 0 ? t.add(`${raceway} ${size}`) : t.replace(`${raceway} ${size}`)}
      </Button>
      {missing.length > 0 && <Notice intent="warning">{t.noColumns(missing.join(", "))}</Notice>}
      {task.problem && <Notice intent="error">{task.problem}</Notice>}
      {before && (
        <Notice
          intent="success"
          actions={
            before === "new" ? undefined : (
              <Button size="small" onClick={() => void task.run(() => takeBack(before))}>
                {strings.bend.put.takeBack}
              </Button>
            )
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
