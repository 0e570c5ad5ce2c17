import type { Calibrated } from "../../src/bends/testBends/calibrate";
import { readRaceway, type Raceway } from "../../src/raceway/raceway";
import { readTradeSize, type TradeSize } from "../../src/raceway/tradeSize";
import { SHOE_COLUMNS } from "../../src/shop/shoe/readShoe";
import { attempt } from "../components/attempt";
import { columnPlaces } from "../workbook/columns";
import type { Cell } from "../workbook/items";

/** What a test bend puts into the Shoes table: rounded to thousandths, finer than any tape. */
export function measuredCells(lines: readonly Calibrated[]): Record<string, Cell> {
  const value = (quantity: string) => lines.find((line) => line.quantity === quantity)?.value;
  const wanted = { Radius: value("Radius"), Deduct: value("Deduct"), Springback: value("Springback") };
  return Object.fromEntries(
    Object.entries(wanted).flatMap(([name, number]) =>
      number === undefined ? [] : [[name, Number(number.toFixed(3))]],
    ),
  );
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

/** The row with the measured values in it; its other cells stay as they are. */
export function withMeasured(
  headers: readonly Cell[],
  row: readonly Cell[],
  measured: Readonly<Record<string, Cell>>,
): Cell[] {
  const places = columnPlaces(headers, SHOE_COLUMNS);
  const next = headers.map((_, place) => row[place] ?? "");
  for (const [name, value] of Object.entries(measured)) {
    const place = places.get(name);
    if (place !== undefined) next[place] = value;
  }
  return next;
}
