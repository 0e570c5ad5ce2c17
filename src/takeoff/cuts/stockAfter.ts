import { showSteps, stepsToInches, type CutGrid, type CutPlan } from "../../cutting";
import { findColumns } from "../../table/headerTable";
import { SAME_PLACE } from "../../units/tolerances";
import type { CutLine } from "../saw/cutLines";
import type { CutLot } from "./cutLots";
import { readStock, STOCK_COLUMNS, type StockRow } from "./cutStock";

type Cell = string | number | boolean;

/** What cutting one lot takes from what is on hand, and the drops it leaves there. */
export interface StockChange extends Pick<CutLot, "raceway" | "size"> {
  readonly used: readonly { readonly length: number; readonly count: number }[];
  readonly drops: readonly StockDrop[];
}

/** Equal drops. */
export interface StockDrop {
  /** [in] */
  readonly length: number;
  /** As it is written in Stock: inches, or millimeters in words. */
  readonly cell: string | number;
  readonly count: number;
  readonly names: string;
}

export function stockChange(
  { raceway, size }: CutLot,
  { stocks, used }: CutPlan,
  lines: readonly CutLine[],
  grid: CutGrid,
): StockChange {
  const inches = (steps: number): number => stepsToInches(steps, grid);
  const drops = new Map<number, StockDrop>();
  for (const { pattern, drop } of lines) {
    if (drop?.goesTo !== "Stock") continue;
    const { remnant, count } = pattern;
    const there = drops.get(remnant);
    drops.set(remnant, {
      length: inches(remnant),
      cell: grid === "0.1 mm" ? showSteps(remnant, grid) : inches(remnant),
      count: count + (there?.count ?? 0),
      names: there ? `${there.names}, ${drop.names}` : drop.names,
    });
  }
  const onHand = stocks.flatMap(({ length, quantity }, k) =>
    quantity === Infinity || !used[k] ? [] : [{ length: inches(length), count: used[k] }],
  );
  return { raceway, size, used: onHand, drops: [...drops.values()] };
}

/** One cell of a Stock range; a row that the range does not have yet goes under it. */
export interface StockEdit {
  /** Place in the range, 0 for its first row. */
  readonly row: number;
  readonly column: number;
  readonly cell: Cell;
}

/**
 * What Stock says once plans are cut: what they take from on hand is taken off, a row that runs out is emptied, and drops
 * are added to a row of their length or stand in rows of their own.
 *
 * @param range Stock with its header row
 */
export function stockAfter(range: readonly (readonly Cell[])[], changes: readonly StockChange[]): StockEdit[] {
  const sheet = new StockSheet(range);
  for (const { raceway, size, used, drops } of changes) {
    const rows = readStock(range).rows.filter((row) => row.raceway === raceway && row.size === size);
    for (const { length, count } of used) sheet.take(onHandOf(rows, length), count);
    for (const drop of drops) {
      const [same] = onHandOf(rows, drop.length);
      if (same && sheet.left(same) > 0) sheet.put(same, drop);
      else sheet.append({ Raceway: raceway, Size: size, Length: drop.cell, "On hand": drop.count, Note: drop.names });
    }
  }
  return sheet.edits();
}

const onHandOf = (rows: readonly StockRow[], length: number): StockRow[] =>
  rows.filter(({ stick }) => stick.onHand !== null && Math.abs(stick.length - length) < SAME_PLACE);

/** A Stock range and what is to be written over it. */
class StockSheet {
  private readonly places: ReadonlyMap<string, number>;
  private readonly written = new Map<string, StockEdit>();
  private readonly onHand = new Map<number, number>();
  private free: number;

  constructor(private readonly range: readonly (readonly Cell[])[]) {
    this.places = findColumns(range[0] ?? [], "stock", [...STOCK_COLUMNS, { name: "Note" }]);
    const used = [...this.places.values()];
    const isFilled = (row: readonly Cell[]) => used.some((place) => String(row[place] ?? "").trim() !== "");
    this.free = range.reduce((free, row, at) => (isFilled(row) ? at + 1 : free), 0);
  }

  /** How many there are still of a row. */
  left({ rowNumber, stick }: StockRow): number {
    return this.onHand.get(rowNumber) ?? stick.onHand ?? 0;
  }

  take(rows: readonly StockRow[], count: number): void {
    let wanted = count;
    for (const row of rows) {
      const there = this.left(row);
      const taken = Math.min(wanted, there);
      if (taken === 0) continue;
      wanted -= taken;
      this.onHand.set(row.rowNumber, there - taken);
      if (taken < there) this.write(row.rowNumber - 1, "On hand", there - taken);
      else for (const column of this.places.keys()) this.write(row.rowNumber - 1, column, "");
    }
  }

  put(row: StockRow, { count, names }: StockDrop): void {
    const at = row.rowNumber - 1;
    this.onHand.set(row.rowNumber, this.left(row) + count);
    this.write(at, "On hand", this.left(row));
    const note = String(this.range[at]?.[this.places.get("Note") ?? -1] ?? "");
    this.write(at, "Note", note === "" ? names : `${note}; ${names}`);
  }

  append(cells: Readonly<Record<string, Cell>>): void {
    for (const [column, cell] of Object.entries(cells)) this.write(this.free, column, cell);
    this.free++;
  }

  edits(): StockEdit[] {
    return [...this.written.values()];
  }

  private write(row: number, name: string, cell: Cell): void {
    const column = this.places.get(name);
    if (column !== undefined) this.written.set(`${row},${column}`, { row, column, cell });
  }
}
