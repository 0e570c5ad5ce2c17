import type { Cell } from "../../workbook/items";
import { reading } from "../batch";
import type { TableCells } from "./readTables";

/** A table whose cells are formulas that read another, row by row. */
export interface Linked {
  /** The table it reads. */
  source: string;
  /** How many rows of that one it has none for. */
  lacks: number;
  /** The formulas of its first row. */
  first: Cell[];
}

/** Whether a table shows another, and how many rows of that it lacks; undefined for one that reads no other. */
export function readLinked({ sheet, row, column, cells }: TableCells): Promise<Linked | undefined> {
  return reading(async (context) => {
    const width = cells[0]?.length ?? 1;
    const range = context.workbook.worksheets.getItem(sheet).getRangeByIndexes(row + 1, column, 1, width);
    range.load("formulas");
    await context.sync();
    const first = (range.formulas as Cell[][])[0] ?? [];
    const source = first.map((formula) => /ROWS\(([^()[\]]+)\)<1,/.exec(String(formula))?.[1]).find(Boolean);
    if (!source) return undefined;
    const other = context.workbook.tables.getItemOrNullObject(source).load("name");
    await context.sync();
    if (other.isNullObject) return undefined;
    const read = other.getDataBodyRange().load("rowCount");
    await context.sync();
    return { source, first, lacks: Math.max(0, read.rowCount - (cells.length - 1)) };
  });
}
