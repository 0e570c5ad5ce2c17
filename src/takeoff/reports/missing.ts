import { buildJob } from "../../shop/job/job";
import { lookUpKey } from "../../units/names/lookUpKey";
import { nearestName } from "../../units/names/nearestName";
import { countsIn } from "../amounts/counts";
import { jobWork } from "../amounts/jobWork";
import { unusedTypicals } from "../lists/unusedTypicals";
import type { TakeoffLine } from "../amounts/lineBook";
import { readOrder } from "../lines/order";
import { takeoffLines } from "../lines/takeoffLines";
import { operationNames, readLabor, workName, type LaborBook } from "../lists/labor";
import { notRead } from "../lists/notRead";
import { readPrices, type PriceBook } from "../lists/prices";
import { oldQuotes, type OldQuote } from "./oldQuotes";
import { listIn, type ListedName } from "../lists/valueList";

type Cell = string | number;

/** The two tables that a job's names are looked up in. */
export type ListName = "Prices" | "Labor";

/** Something a table lacks, under the name to write into it. */
export interface Missing {
  readonly list: ListName;
  readonly name: string;
  readonly unit: string;
  readonly quantity: number;
  readonly finding: string;
  /** True where the table has a row of that name, which waits to be filled in. */
  readonly listed: boolean;
  /** A row of the table that may be meant for it. */
  readonly meant: string;
}

/** What the tables of a job may be. */
export interface MissingRanges {
  readonly prices?: unknown;
  readonly labor?: unknown;
  readonly shoes?: unknown;
  readonly rules?: unknown;
  readonly stock?: unknown;
  readonly counts?: unknown;
}

const HEADERS = ["List", "Name", "Unit", "Quantity", "Finding", "Near"];

/** Most rows that stand for nothing in the job and are named: a firm's price list is longer than any job. */
const MOST_NAMED = 100;

/**
 * What the Prices and Labor tables lack for a job, ready to be filled in, then their rows that stand for nothing in it, as
 * a table with a header row.
 *
 * @throws InputError when a range lacks a needed column
 */
export function missingTable(runs: unknown, ranges: MissingRanges = {}): Cell[][] {
  const { lacking, old, unused, problems } = findMissing(runs, ranges);
  const rows = lacking.map(({ list, name, unit, quantity, finding, meant }): Cell[] => [
    ...[list, name, unit, quantity, finding, meant],
  ]);
  const nothing = ["", "nothing is missing", "", "", "every item has its price, every operation its minutes", ""];
  return [
    HEADERS,
    ...(rows.length > 0 || problems.length > 0 ? rows : [nothing]),
    ...old.map(({ line: { item, quantity }, finding }): Cell[] => [
      ...["Prices", item.name, item.unit, quantity, finding, ""],
    ]),
    ...unusedRows("Prices", unused.Prices),
    ...unusedRows("Labor", unused.Labor),
    ...problems.map((problem): Cell[] => ["", "not read", "", "", problem, ""]),
  ];
}

/** A row that stands for nothing in the job, and the name it may be meant for. */
interface Unused extends ListedName {
  readonly meant: string | undefined;
}

/** What is missing, and what is there for nothing. */
export function findMissing(
  runs: unknown,
  ranges: MissingRanges = {},
): {
  readonly lacking: readonly Missing[];
  readonly old: readonly OldQuote[];
  readonly unused: Readonly<Record<ListName, readonly Unused[]>>;
  readonly problems: readonly string[];
} {
  const { stock } = readOrder(ranges);
  const job = buildJob({ runs, ...ranges });
  const prices = listIn(ranges.prices, readPrices);
  const labor = listIn(ranges.labor, readLabor);
  const { works, problems } = jobWork(job);
  const counts = countsIn(ranges.counts, job.rules);
  const lines = takeoffLines(works, [], job.rules, stock, counts);
  const noPrice = withoutPrice(lines, prices);
  const noMinutes = withoutMinutes(lines, labor);
  const unused = {
    Prices: unusedOf(prices?.names ?? [], priceNames(lines), noPrice),
    Labor: unusedOf(labor?.names ?? [], laborNames(lines), noMinutes),
  };
  return {
    lacking: [
      ...withRows(noPrice, prices?.names ?? [], unused.Prices),
      ...withRows(noMinutes, labor?.names ?? [], unused.Labor),
    ],
    unused,
    old: oldQuotes(lines, prices, job.rules),
    problems: [
      ...problems.map(({ name, message }) => `not counted: ${name}: ${message}`),
      ...notRead(job, job.rules, stock, prices, labor, counts),
      ...unusedTypicals(job, ranges.counts),
    ],
  };
}

const UNLISTED = { listed: false, meant: "" } as const;

const isBought = ({ item, quantity }: TakeoffLine): boolean => item.bought && quantity > 0;

function withoutPrice(lines: readonly TakeoffLine[], prices: PriceBook | undefined): Missing[] {
  return lines.filter(isBought).flatMap(({ item, quantity }) => {
    const { unitPrice, note } = prices?.priceOf(item) ?? { unitPrice: item.stockPrice ?? null, note: "" };
    if (unitPrice !== null) return [];
    const finding = note === "" || note === `no price for ${item.name}` ? "no price yet" : note;
    return { list: "Prices", name: item.name, unit: item.unit, quantity, finding, ...UNLISTED } as const;
  });
}

/** Work without minutes, under a name with raceway and size: work goes by them. */
function withoutMinutes(lines: readonly TakeoffLine[], labor: LaborBook | undefined): Missing[] {
  const found = new Map<string, Missing>();
  for (const { item, operations } of lines) {
    if (item.kind === "stick") continue;
    for (const [operation, quantity] of operations) {
      if (quantity <= 0 || labor?.minutesFor(item, operation) !== undefined) continue;
      const name = workName(item, operation);
      const before = found.get(name)?.quantity ?? 0;
      const entry = { list: "Labor", name, unit: item.unit, quantity: before + quantity } as const;
      const finding = labor?.whyNone(item, operation) || "no minutes yet";
      found.set(name, { ...entry, finding, ...UNLISTED });
    }
  }
  return [...found.values()];
}

/** Every name a price of this job may go by. */
const priceNames = (lines: readonly TakeoffLine[]): string[] => lines.map(({ item }) => item.name);

/** Every name the minutes of this job's work may go by. */
const laborNames = (lines: readonly TakeoffLine[]): string[] =>
  lines.flatMap(({ item, operations }) =>
    item.kind === "stick" ? [] : [...operations.keys()].flatMap((operation) => operationNames(item, operation)),
  );

/** Rows that stand for nothing in the job; names that are still wanted come first among what they may mean. */
function unusedOf(listed: readonly ListedName[], known: readonly string[], wanted: readonly Missing[]): Unused[] {
  const keys = new Set(known.map(lookUpKey));
  const names = [...wanted.map(({ name }) => name), ...new Set(known)];
  return listed
    .filter(({ name }) => !keys.has(lookUpKey(name)))
    .map((row) => ({ ...row, meant: nearestName(row.name, names) }));
}

/** What is missing, each with its own row, or with one that may be meant for it. */
function withRows(missing: readonly Missing[], names: readonly ListedName[], unused: readonly Unused[]): Missing[] {
  const rows = new Map(names.map(({ name, rowNumber }) => [lookUpKey(name), rowNumber]));
  return missing.map((entry) => {
    const row = rows.get(lookUpKey(entry.name));
    if (row === undefined) return { ...entry, meant: unused.find(({ meant }) => meant === entry.name)?.name ?? "" };
    return { ...entry, listed: true, finding: `${entry.finding}: row ${row} waits for it` };
  });
}

function unusedRows(list: ListName, unused: readonly Unused[]): Cell[][] {
  const likely = unused.filter(({ meant }) => meant !== undefined);
  const named = [...likely, ...unused.filter(({ meant }) => meant === undefined)].slice(0, MOST_NAMED);
  const left = unused.length - named.length;
  return [
    ...named.map(({ name, rowNumber, meant }): Cell[] => {
      const finding = meant ? `row ${rowNumber} matches nothing: did you mean ${meant}?` : `row ${rowNumber} matches nothing in this job`;
      return [list, name, "", "", finding, meant ?? ""];
    }),
    ...(left > 0 ? [[list, `and ${left} more rows`, "", "", "match nothing in this job", ""]] : []),
  ];
}
