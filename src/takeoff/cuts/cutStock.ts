import { toSteps, type CutGrid, type CutStock } from "../../cutting";
import { remember } from "../../memory/remember";
import { rememberTable } from "../../memory/tables";
import { readRaceway, type Raceway } from "../../raceway/raceway";
import { usableStick } from "../../raceway/sticks";
import { readTradeSize, type TradeSize } from "../../raceway/tradeSize";
import { readTable, type TableRow } from "../../table/headerTable";
import { optionalRows, readEach, takeRows } from "../../table/takeRows";
import { toInches } from "../../units/length";
import { toNumber } from "../../units/number";
import { listIn } from "../lists/valueList";

/** Sticks of one length that pieces can be cut from. */
export interface Stick {
  /** [in] */
  readonly length: number;
  /** How many there are, offcuts on the rack; null: as many as are wanted, to be bought. */
  readonly onHand: number | null;
  /** What one costs; null when the user does not say. */
  readonly price: number | null;
}

/** Sticks of a raceway and size. */
export interface StockRow {
  /** Place of the row in its range, 1 for the first. */
  readonly rowNumber: number;
  readonly raceway: Raceway;
  readonly size: TradeSize;
  readonly stick: Stick;
}

/** Prices are planned with in steps of a thousandth. */
export const PRICE_STEPS = 1000;

/** Sticks as the cutting room takes them. @throws InputError for a length off the grid */
export const stocksOf = (sticks: readonly Stick[], grid: CutGrid): CutStock[] =>
  sticks.map(({ length, onHand, price }) => ({
    length: toSteps(length, grid, "stick"),
    ...(onHand === null ? {} : { quantity: onHand }),
    ...(price === null ? {} : { cost: Math.round(price * PRICE_STEPS) }),
  }));

/** True when the sticks to be bought have prices, so that the plan makes money least, not sticks. */
export const isPriced = (sticks: readonly Stick[]): boolean =>
  sticks.some(({ onHand, price }) => onHand === null && price !== null);

export interface StockBook {
  readonly rows: readonly StockRow[];
  sticksFor(raceway: Raceway, size: TradeSize): readonly Stick[];
  readonly problems: readonly string[];
  readonly empty: boolean;
}

const STICK_COLUMNS = [
  { name: "Length", required: true, also: ["Stick"] },
  { name: "On hand", also: ["Quantity"], zero: true },
  { name: "Price" },
];

export const STOCK_COLUMNS = [{ name: "Raceway", required: true }, { name: "Size", required: true }, ...STICK_COLUMNS];

/** Longest stick that is taken for one [in]: 40 ft. */
const LONGEST = 480;
/** Highest price of a stick that is planned with. */
const DEAREST = 10_000;

function readStick(row: TableRow): Stick {
  const [onHand, price] = [row.get("On hand"), row.get("Price")];
  const isBought = onHand === null || isBuy(onHand);
  return {
    length: toInches(row.get("Length"), "Length", { above: 0, max: LONGEST }),
    onHand: isBought ? null : toNumber(onHand, "On hand", { min: 0, integer: true }),
    price: price === null ? null : toNumber(price, "Price", { min: isBought ? 1 / PRICE_STEPS : 0, max: DEAREST }),
  };
}

/** The word for sticks that are bought as they are wanted, in the place of an empty cell. */
const isBuy = (cell: unknown): boolean => typeof cell === "string" && cell.trim().toLowerCase() === "buy";

const NONE_ON_HAND =
  "On hand is 0, so none is taken; for sticks to be bought write buy, since an empty cell may be handed over as 0.";

/**
 * Reads a Stock range: Raceway, Size, Length, On hand (empty or the word buy: to be bought), Price. A bad row is told and
 * hides no other; a row with none on hand is told too. A threaded stick of 10 or 20 ft has its coupling in that length.
 */
export const readStock: (range: unknown) => StockBook = rememberTable((range) => {
  const rows: StockRow[] = [];
  const lines = optionalRows(range, "stock", STOCK_COLUMNS);
  const problems = takeRows(lines, "stock", (row, tell) => {
    const [raceway, size] = [readRaceway(row.get("Raceway"), "Raceway"), readTradeSize(row.get("Size"), "Size")];
    const called = readStick(row);
    const stick = { ...called, length: usableStick(raceway, size, called.length) };
    rows.push({ rowNumber: row.rowNumber, raceway, size, stick });
    if (stick.onHand === 0) tell(NONE_ON_HAND);
  });
  return { ...stockOf(rows), problems, empty: lines.length === 0 };
});

/** Rows of a stock, found by what they are for. */
function stockOf(rows: readonly StockRow[]): Pick<StockBook, "rows" | "sticksFor"> {
  const sticks = new Map<string, Stick[]>();
  const keyOf = (raceway: Raceway, size: TradeSize) => `${raceway} ${size}`;
  for (const { raceway, size, stick } of rows) {
    const key = keyOf(raceway, size);
    sticks.set(key, [...(sticks.get(key) ?? []), stick]);
  }
  return {
    rows,
    sticksFor: (raceway, size) => sticks.get(keyOf(raceway, size)) ?? [],
  };
}

/** The stock without what is on hand. */
export const toBuy: (stock: StockBook) => StockBook = remember((stock) => ({
  ...stock,
  ...stockOf(stock.rows.filter(({ stick }) => stick.onHand === null)),
}));

/** The stock an order starts from; none where the range is left out or nothing is filled in below its headers. */
export function stockIn(range: unknown): StockBook | undefined {
  return listIn(range, readStock);
}

/**
 * Reads the sticks for a plain list of lengths: one length, or a range with Length, On hand and Price.
 * @throws InputError when a row cannot be read
 */
export function readSticks(value: unknown, usual: number): Stick[] {
  if (value === null || value === undefined || value === "") return [{ length: usual, onHand: null, price: null }];
  const single = Array.isArray(value) && value.length === 1 && value[0]?.length === 1 ? value[0][0] : value;
  if (!Array.isArray(single)) {
    return [{ length: toInches(single, "stock", { above: 0, max: LONGEST }), onHand: null, price: null }];
  }
  return readEach(readTable(single, "stock", STICK_COLUMNS).rows, "stock", readStick);
}
