import { defaultShoe } from "../../raceway/defaultShoes";
import { outsideDiameter } from "../../raceway/dimensions";
import { racewayRecord, readRaceway, type Raceway } from "../../raceway/raceway";
import { readTradeSize, type TradeSize } from "../../raceway/tradeSize";
import { readTable, type Column, type TableRow } from "../../table/headerTable";
import { InputError, isUserError, NotListedError } from "../../units/errors";
import { toInches } from "../../units/length";
import { toNumber } from "../../units/number";
import { arrowLead, type Shoe } from "./shoe";

/** Columns of the Shoes table. Empty cells take the built-in value, and so does 0 where it cannot be. */
export const SHOE_COLUMNS: readonly Column[] = [
  { name: "Raceway", required: true },
  { name: "Size", required: true, also: ["Trade size"] },
  { name: "Radius", also: ["Centerline radius"] },
  { name: "Deduct", also: ["Take-up"] },
  { name: "Springback", zero: true },
  { name: "Dial from", zero: true },
  { name: "Dial to" },
  { name: "Dial start", zero: true },
  { name: "Shortest tail" },
  { name: "Made for" },
];

/** The dial runs from a little below zero to a little past 90 [°]. Common practice, no source. */
const DIAL = { from: -5, to: 105, start: 0 };
/** Straight end that a shoe and its hook need [in]. Common practice, no source: measure your own. */
const SHORTEST_TAIL = 2;

/** A row of the Shoes table that could not be read. */
export interface ShoeProblem {
  readonly rowNumber: number;
  readonly message: string;
}

/** The shoe for a raceway and size; or why its row cannot be used; or that neither table has one. */
export type ShoeAnswer = { readonly shoe: Shoe } | { readonly unusable: string } | { readonly notListed: string };

/** The shoes of a shop: the user's rows first, built-in defaults for the rest. */
export interface ShoeBook {
  lookUp(raceway: Raceway, size: TradeSize): ShoeAnswer;
  /** @throws InputError or NotListedError when neither the user's table nor the built-in one has a usable shoe */
  shoeFor(raceway: Raceway, size: TradeSize): Shoe;
  /** The user's own shoes that could be read. */
  readonly own: readonly Shoe[];
  readonly problems: readonly ShoeProblem[];
}

/**
 * Reads the Shoes range; without one, only the built-in shoes are used. A bad row is told and does not hide the
 * others; a run that needs that very shoe gets the row's message.
 */
export function readShoes(range: unknown): ShoeBook {
  const own = new Map<string, Shoe>();
  const spoilt = new Map<string, string>();
  const problems: ShoeProblem[] = [];
  const rows = range === null || range === undefined ? [] : readTable(range, "shoes", SHOE_COLUMNS).rows;
  for (const row of rows) {
    let key = "";
    try {
      const raceway = readRaceway(row.get("Raceway"));
      const size = readTradeSize(row.get("Size"));
      key = keyOf(raceway, size);
      if (own.has(key) || spoilt.has(key)) {
        throw new InputError(`${raceway} ${size} stands twice in shoes; keep one row for each raceway and size.`);
      }
      own.set(key, readShoe(row, raceway, size));
    } catch (error) {
      if (!isUserError(error)) throw error;
      const message = `shoes row ${row.rowNumber}: ${error.message}`;
      problems.push({ rowNumber: row.rowNumber, message });
      if (key) spoilt.set(key, message);
    }
  }
  const lookUp = (raceway: Raceway, size: TradeSize): ShoeAnswer => {
    const unusable = spoilt.get(keyOf(raceway, size));
    if (unusable !== undefined) return { unusable };
    const shoe = own.get(keyOf(raceway, size));
    return shoe ? { shoe } : builtIn(raceway, size);
  };
  return {
    own: [...own.values()],
    problems,
    lookUp,
    shoeFor(raceway, size) {
      const answer = lookUp(raceway, size);
      if ("shoe" in answer) return answer.shoe;
      throw "unusable" in answer ? new InputError(answer.unusable) : new NotListedError(answer.notListed);
    },
  };
}

const keyOf = (raceway: Raceway, size: TradeSize): string => `${raceway} ${size}`;

/** The built-in shoe for a raceway and size, an editable default: measure your own with a test bend. */
export function builtInShoe(raceway: Raceway, size: TradeSize): Shoe {
  const base = defaultShoe(raceway, size);
  return {
    raceway,
    size,
    radius: base.radius,
    deduct: base.deduct,
    outsideDiameter: outsideDiameter(raceway, size),
    springback: base.springback,
    dialFrom: DIAL.from,
    dialTo: DIAL.to,
    dialStart: DIAL.start,
    shortestTail: SHORTEST_TAIL,
    source: base.source,
  };
}

function builtIn(raceway: Raceway, size: TradeSize): ShoeAnswer {
  try {
    return { shoe: builtInShoe(raceway, size) };
  } catch (error) {
    if (!(error instanceof NotListedError)) throw error;
    return { notListed: error.message };
  }
}

function readShoe(row: TableRow, raceway: Raceway, size: TradeSize): Shoe {
  const base = () => baseShoe(row.get("Made for"), raceway, size);
  const builtIn: string[] = [];
  const optional = (column: string, read: (cell: unknown) => number, fallback: () => number): number => {
    const cell = row.get(column);
    if (cell !== null) return read(cell);
    builtIn.push(column);
    return fallback();
  };
  const shoe: Shoe = {
    raceway,
    size,
    radius: optional(
      "Radius",
      (cell) => toInches(cell, "Radius", { above: 0 }),
      () => base().radius,
    ),
    deduct: optional(
      "Deduct",
      (cell) => toInches(cell, "Deduct", { above: 0 }),
      () => base().deduct,
    ),
    outsideDiameter: outsideDiameter(raceway, size),
    springback: optional(
      "Springback",
      (cell) => toNumber(cell, "Springback", { min: 0, max: 45 }),
      () => 0,
    ),
    dialFrom: optional(
      "Dial from",
      (cell) => toNumber(cell, "Dial from", { min: -90, max: 90 }),
      () => DIAL.from,
    ),
    dialTo: optional(
      "Dial to",
      (cell) => toNumber(cell, "Dial to", { min: 0, max: 270 }),
      () => DIAL.to,
    ),
    dialStart: optional(
      "Dial start",
      (cell) => toNumber(cell, "Dial start", { min: -90, max: 90 }),
      () => DIAL.start,
    ),
    shortestTail: optional(
      "Shortest tail",
      (cell) => toInches(cell, "Shortest tail", { min: 0 }),
      () => SHORTEST_TAIL,
    ),
    source: "",
  };
  checkShoe(shoe);
  return { ...shoe, source: sourceOf(row.rowNumber, builtIn), row: row.rowNumber };
}

/** Where a shoe's numbers stand; an empty radius or deduct (0 counts as empty) is the built-in one, and this says so. */
function sourceOf(rowNumber: number, builtIn: readonly string[]): string {
  const measures = ["Radius", "Deduct"].filter((column) => builtIn.includes(column)).map((name) => name.toLowerCase());
  return measures.length === 0
    ? `shoes row ${rowNumber}`
    : `shoes row ${rowNumber}; ${measures.join(" and ")} built in`;
}

function checkShoe(shoe: Shoe): void {
  if (shoe.dialTo <= shoe.dialFrom) {
    throw new InputError(`Dial to must be above Dial from (${shoe.dialFrom}°); got ${shoe.dialTo}°.`);
  }
  if (shoe.dialStart < shoe.dialFrom || shoe.dialStart > shoe.dialTo) {
    throw new InputError(
      `Dial start must lie on the dial, ${shoe.dialFrom}° to ${shoe.dialTo}°; got ${shoe.dialStart}°.`,
    );
  }
  if (arrowLead(shoe) < -shoe.radius) {
    throw new InputError(
      `Deduct must be at least ${(shoe.outsideDiameter / 2).toFixed(3)} in. for this radius and diameter; ` +
        `got ${shoe.deduct} in.`,
    );
  }
}

/** "Made for" names the conduit the shoe was made for: `1` (same raceway) or `RMC 1`. */
function baseShoe(madeFor: unknown, raceway: Raceway, size: TradeSize): { radius: number; deduct: number } {
  if (madeFor === null) return defaultShoe(raceway, size);
  const text = String(madeFor).trim();
  const words = /^(.*\S)\s+([0-9½¼¾][0-9\s/½¼¾-]*)$/.exec(text);
  if (!words) return defaultShoe(shoeKind(raceway), readTradeSize(madeFor, "Made for"));
  return defaultShoe(readRaceway(words[1], "Made for"), readTradeSize(words[2], "Made for"));
}

/** The kind whose shoes a raceway is bent on. */
function shoeKind(raceway: Raceway): Raceway {
  const { shoes } = racewayRecord(raceway);
  return "sizesUp" in shoes ? readRaceway(shoes.name) : raceway;
}
