import { defaultShoe } from "../../raceway/defaultShoes";
import { outsideDiameter } from "../../raceway/dimensions";
import { racewayRecord, readRaceway, type Raceway } from "../../raceway/raceway";
import { readTradeSize, type TradeSize } from "../../raceway/tradeSize";
import type { Column, TableRow } from "../../table/headerTable";
import { dayText } from "../../units/day";
import { InputError } from "../../units/errors";
import { toInches } from "../../units/length";
import { toNumber } from "../../units/number";
import { readSecondTest } from "./secondTest";
import { arrowLead, type Shoe } from "./shoe";
import { shoeModel } from "./springback";

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
  { name: "Second test" },
  { name: "Measured" },
  { name: "Source", also: ["Where the values come from"] },
];

/** The dial runs from a little below zero to a little past 90 [°]. Common practice, no source. */
export const DIAL = { from: -5, to: 105, start: 0 };
/** Straight end that a shoe and its hook need [in]. Common practice, no source: measure your own. */
export const SHORTEST_TAIL = 2;

/** No radius, deduct or tail of a shoe is more than this [in]. Our choice, no source. */
const LARGEST = 1000;

/** Reads a row of the Shoes table. @throws InputError naming the column, the limit and the value */
export function readShoe(row: TableRow, raceway: Raceway, size: TradeSize): Shoe {
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
      (cell) => toInches(cell, "Radius", { above: 0, max: LARGEST }),
      () => base().radius,
    ),
    deduct: optional(
      "Deduct",
      (cell) => toInches(cell, "Deduct", { above: 0, max: LARGEST }),
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
      (cell) => toInches(cell, "Shortest tail", { min: 0, max: LARGEST }),
      () => SHORTEST_TAIL,
    ),
    ...secondTestOf(row),
    source: "",
  };
  checkShoe(shoe);
  const source = sourceOf(row.rowNumber, builtIn, dayText(row.get("Source")));
  return { ...shoe, ...measuredOf(row, builtIn), source, row: row.rowNumber };
}

/** What a test bend of a shoe tells. */
const MEASURES = ["Radius", "Deduct"];

/** A shoe whose radius or deduct is the built-in one was not measured, whatever its row says. */
function measuredOf(row: TableRow, builtIn: readonly string[]): Pick<Shoe, "measured"> {
  const measured = dayText(row.get("Measured"));
  return measured === "" || MEASURES.some((column) => builtIn.includes(column)) ? {} : { measured };
}

/**
 * Where a shoe's numbers stand, and what its row says of them; an empty radius or deduct (0 counts as empty) is the
 * built-in one, and this says so.
 */
function sourceOf(rowNumber: number, builtIn: readonly string[], words: string): string {
  const measures = MEASURES.filter((column) => builtIn.includes(column)).map((name) => name.toLowerCase());
  const own = words === "" ? "" : `: ${words}`;
  return measures.length === 0
    ? `shoes row ${rowNumber}${own}`
    : `shoes row ${rowNumber}${own}; ${measures.join(" and ")} built in`;
}

function secondTestOf(row: TableRow): Pick<Shoe, "secondTest"> {
  const cell = row.get("Second test");
  return cell === null ? {} : { secondTest: readSecondTest(cell) };
}

function checkShoe(shoe: Shoe): void {
  shoeModel(shoe);
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
  return "of" in shoes ? readRaceway(shoes.name) : raceway;
}
