import { Button } from "@fluentui/react-components";
import { useState } from "react";
import { SHOE_COLUMNS } from "../../src/shop/shoe/readShoe";
import type { ScheduleRow } from "../../src/shop/schedule/schedule";
import type { BuiltRun } from "../../src/shop/run/builtRun";
import { Notice } from "../components/Notice";
import { SheetButton } from "../components/SheetButton";
import { useTask } from "../hooks/useTask";
import type { Before, Place, TableCells } from "../excel";
import { useLedger } from "../hooks/useLedger";
import { useWorkbook } from "../hooks/useWorkbook";
import { strings } from "../strings";
import { cellName } from "../workbook/address";
import { columnPlaces } from "../workbook/columns";
import type { Cell } from "../workbook/items";
import { bendBlock, blockSize, type BendBlockInput } from "./bendBlock";
import type { BendChoice, Values } from "./kinds";
import { widestRadius } from "./widestRadius";
import { placesForBlock, type BlockPlaces } from "./placeForBend";

const t = strings.bend.put;

interface PutInSheetProps {
  kind: BendChoice;
  values: Values;
  raceway: string;
  size: string;
  built: BuiltRun;
  rows: readonly ScheduleRow[];
}

type Step = { at: "ready" } | { at: "asking"; places: BlockPlaces } | { at: "written"; before: Before };

/** Writes the bend at the selection as inputs and formulas. Asks before it covers anything, and can take it back. */
export function PutInSheet({ kind, values, raceway, size, built, rows }: PutInSheetProps) {
  const workbook = useWorkbook();
  const ledger = useLedger();
  const { tables, names } = ledger;
  const task = useTask();
  const [step, setStep] = useState<Step>({ at: "ready" });
  const input: BendBlockInput = {
    kind,
    values,
    raceway,
    size,
    radius: radiusCell(tables.Shoes, built),
    bends: rows.filter((row) => row.Mark !== "").length,
    shoesTable: tables.Shoes ? names.Shoes : undefined,
  };

  const write = async (place: Place, cells?: Cell[][]) =>
    setStep({ at: "written", before: await workbook.writeBlock(place, bendBlock(place, input), cells) });
  const ask = async () => {
    const places = await placesForBlock(workbook, ledger, blockSize(input));
    if (places.taken === 0) await write(places.at);
    else setStep({ at: "asking", places });
  };

  return (
    <div className="rl-stack">
      <SheetButton appearance="primary" disabledFocusable={task.busy} onClick={() => void task.run(ask)}>
        {t.button}
      </SheetButton>
      {task.problem && <Notice intent="error">{task.problem}</Notice>}
      {step.at === "asking" && (
        <Notice
          intent="warning"
          title={t.taken(step.places.taken, nameOf(step.places.at))}
          actions={
            <>
              <SheetButton
                size="small"
                appearance="primary"
                onClick={() => void task.run(() => write(step.places.aside))}
              >
                {t.below(nameOf(step.places.aside))}
              </SheetButton>
              <SheetButton size="small" onClick={() => void task.run(() => write(step.places.at, step.places.cells))}>
                {t.over}
              </SheetButton>
              <Button size="small" onClick={() => setStep({ at: "ready" })}>
                {strings.common.cancel}
              </Button>
            </>
          }
        >
          {t.where}
        </Notice>
      )}
      {step.at === "written" && (
        <Notice
          intent="success"
          actions={
            <SheetButton
              size="small"
              onClick={() =>
                void task.run(async () => {
                  await workbook.takeBack(step.before);
                  setStep({ at: "ready" });
                })
              }
            >
              {t.takeBack}
            </SheetButton>
          }
        >
          {t.written(step.before.sheet, nameOf(step.before))}
        </Notice>
      )}
    </div>
  );
}

const nameOf = ({ row, column }: Place): string => cellName(row, column);

/**
 * Points at the shoe's own cell where the Shoes table has one, so that a new calibration changes the bend too. A second
 * test gives each angle a radius of its own: then it is the number.
 */
function radiusCell(shoes: TableCells | undefined, built: BuiltRun): Cell {
  const { shoe } = built;
  const { row } = shoe;
  if (shoe.secondTest) return widestRadius(built);
  const place = shoes && columnPlaces(shoes.cells[0] ?? [], SHOE_COLUMNS).get("Radius");
  if (!shoes || row === undefined || place === undefined) return shoe.radius;
  const cell = shoes.cells[row - 1]?.[place];
  if (typeof cell !== "number" || cell === 0) return shoe.radius;
  return `='${shoes.sheet.replace(/'/g, "''")}'!${cellName(shoes.row + row - 1, shoes.column + place)}`;
}
