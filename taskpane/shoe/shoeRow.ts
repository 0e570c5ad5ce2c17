import type { Calibrated } from "../../src/bends/testBends/calibrate";
import { readRaceway, type Raceway } from "../../src/raceway/raceway";
import { readTradeSize, type TradeSize } from "../../src/raceway/tradeSize";
import { SHOE_COLUMNS } from "../../src/shop/shoe/readShoe";
import { showInches } from "../../src/units/show";
import { strings } from "../strings";
import type { MeasuredSpringback } from "./measures";
import { attempt } from "../components/attempt";
import { columnPlaces } from "../workbook/columns";
import type { Cell } from "../workbook/items";

/** What test bends put into the Shoes table: rounded to thousandths, finer than any tape; and where it comes from. */
export function measuredCells(
  lines: readonly Calibrated[],
  { at90, secondTest }: MeasuredSpringback,
  day: string,
): Record<string, Cell> {
  const [radius, deduct] = ["Radius", "Deduct"].map((name) => lines.find(({ quantity }) => quantity === name)!);
  const round = (value: number) => Number(value.toFixed(3));
  const off = (line: Calibrated | undefined) => showInches(line?.worst ?? 0, 2);
  return {
    Radius: round(radius!.value),
    Deduct: round(deduct!.value),
    Springback: round(at90),
    "Second test": secondTest,
    Measured: strings.shoe.keep.measured(day, off(radius), off(deduct)),
    Source: strings.shoe.keep.source(secondTest === "" ? 1 : 2),
  };
}

/** Columns that hold what was measured and that the table lacks; an empty cell needs none. */
export function missingColumns(headers: readonly Cell[], measured: Readonly<Record<string, Cell>>): string[] {
  const places = columnPlaces(headers, SHOE_COLUMNS);
  return Object.entries(measured).flatMap(([name, value]) => (places.has(name) || value === "" ? [] : [name]));
}

/** Row of the Shoes table for a raceway and size (1 for the first under the header); 0 when it has none. */
export function shoeRowOf(cells: readonly (readonly Cell[])[], raceway: Raceway, size: TradeSize): number {
  const places = columnPlaces(cells[0] ?? [], SHOE_COLUMNS);
  const is = (row: readonly Cell[]) =>
    attempt(() => readRaceway(row[places.get("Raceway") ?? -1])).value === raceway &&
    attempt(() => readTradeSize(row[places.get("Size") ?? -1])).value === size;
  return Math.max(
    0,
    cells.findIndex((row, index) => index > 0 && is(row)),
  );
}

/** The places of measured values in a row of the Shoes table; its other cells are not ours to write. */
export function measuredPlaces(
  headers: readonly Cell[],
  measured: Readonly<Record<string, Cell>>,
): { place: number; cell: Cell }[] {
  const places = columnPlaces(headers, SHOE_COLUMNS);
  return Object.entries(measured).flatMap(([name, cell]) => {
    const place = places.get(name);
    return place === undefined ? [] : [{ place, cell }];
  });
}
