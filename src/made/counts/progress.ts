import { compareGroups, groupCell, readBy, RUN_GROUP_NAMES } from "../../takeoff/amounts/groupBy";
import { sizedItem } from "../../takeoff/amounts/item";
import { labelKey } from "../../takeoff/amounts/lineBook";
import { shopBends, type ShopBend } from "../../takeoff/amounts/pullMaterial";
import { readLabor, type LaborBook } from "../../takeoff/lists/labor";
import { notRead } from "../../takeoff/lists/notRead";
import { listIn } from "../../takeoff/lists/valueList";
import { buildJob, unbuiltRows } from "../../shop/job/job";
import { readMade } from "../records/madeTable";
import { tallyJob, type PieceTally } from "./tally";

type Cell = string | number;

/** What progress may be given besides the runs and what was made. */
export interface ProgressRanges {
  readonly by?: unknown;
  readonly shoes?: unknown;
  readonly rules?: unknown;
  readonly labor?: unknown;
}

const BY_DEFAULT = ["Job", "Raceway", "Size"];

/** Pieces and bends of one line. */
class Line {
  readonly sums = { need: 0, made: 0, scrapped: 0, extra: 0, bendsNeed: 0, bendsMade: 0, minutes: 0 };
  readonly noMinutes = new Set<string>();

  constructor(readonly group: readonly Cell[]) {}
}

/** A number of equal pieces that go to one group: so many needed, and so many of these made. */
interface Portion {
  readonly by: string;
  readonly need: number;
  readonly made: number;
  readonly extra: number;
  readonly scrapped: number;
}

/**
 * What a job needs, what was made of it and what is left, by columns of Runs, kind of bend and who made it, as a table
 * with a header row and a totals row; last, records that name no piece of the job, and what could not be read. Pieces made
 * beyond what is needed are told and count as no progress. With a Labor range, the hours that the bends left will take.
 *
 * @throws InputError when a range lacks a needed column or `by` names none
 */
export function progress(runs: unknown, made: unknown, ranges: ProgressRanges = {}): Cell[][] {
  const by = readBy(ranges.by, [...RUN_GROUP_NAMES, "Kind", "By"], BY_DEFAULT);
  const job = buildJob({ runs, ...ranges });
  const labor = listIn(ranges.labor, readLabor);
  const book = readMade(made);
  const tally = tallyJob(job, book);
  const total = new Line(by.map((_, index) => (index === 0 ? "Total" : "")));
  const lines = new Map<string, Line>();
  for (const piece of tally.pieces) {
    const kinds = by.includes("Kind") ? kindsOf(piece) : [{ kind: "", bends: shopBends(piece.piece) }];
    for (const portion of portionsOf(piece)) {
      for (const { kind, bends } of kinds) {
        const group = by.map((column) =>
          column === "Kind" ? kind : column === "By" ? portion.by : groupCell(piece.row.run, column),
        );
        const key = labelKey(group);
        const line = lines.get(key) ?? new Line(group);
        lines.set(key, line);
        count(line, piece, portion, bends, labor);
      }
      count(total, piece, portion, shopBends(piece.piece), labor);
    }
  }
  const headers = [...by, ...COUNTS, ...(labor ? ["Hours left"] : []), "Note"];
  const told = (words: string, note: string): Cell[] => [words, ...headers.slice(2).map(() => ""), note];
  const sorted = [...lines.values()].sort((a, b) => compareGroups(by, a.group, b.group));
  return [
    headers,
    ...[...(by.length > 0 ? sorted : []), total].map((line) => cellsOf(line, labor)),
    ...unbuiltRows(job).map(({ name, problem }) => told(`not counted: ${name}`, problem)),
    ...tally.strangers.map(({ record, reason }) => told(`made row ${record.rowNumber}: ${record.piece}`, reason)),
    ...[...book.problems, ...notRead(job, job.rules, labor)].map((problem) => told("not read", problem)),
  ];
}

const COUNTS = [
  ...["Pieces needed", "Pieces made", "Pieces left", "Pieces scrapped"],
  ...["Bends needed", "Bends made", "Bends left"],
];

/** Bends of a piece by their kind; a piece without bends is straight. */
function kindsOf({ piece }: PieceTally): { kind: string; bends: ShopBend[] }[] {
  const kinds = new Map<string, ShopBend[]>();
  for (const bend of shopBends(piece)) kinds.set(bend.kind, [...(kinds.get(bend.kind) ?? []), bend]);
  return kinds.size === 0 ? [{ kind: "straight", bends: [] }] : [...kinds].map(([kind, bends]) => ({ kind, bends }));
}

/** What each person made of a piece, and what nobody has. */
function portionsOf({ shares, left }: PieceTally): Portion[] {
  return [
    ...shares.map(({ record: { by }, good, extra, scrapped }) => ({ by, need: good, made: good, extra, scrapped })),
    ...(left > 0 ? [{ by: "", need: left, made: 0, extra: 0, scrapped: 0 }] : []),
  ];
}

function count(line: Line, { row }: PieceTally, portion: Portion, bends: readonly ShopBend[], labor?: LaborBook): void {
  const { need, made, extra, scrapped } = portion;
  const { sums } = line;
  sums.need += need;
  sums.made += made;
  sums.extra += extra;
  sums.scrapped += scrapped;
  sums.bendsNeed += need * bends.length;
  sums.bendsMade += made * bends.length;
  if (need === made) return;
  for (const { kind } of bends) {
    const minutes = labor?.minutesFor(sizedItem(row.run, "bend"), kind);
    if (minutes === undefined) line.noMinutes.add(kind);
    else sums.minutes += minutes * (need - made);
  }
}

function cellsOf({ group, sums, noMinutes }: Line, labor: LaborBook | undefined): Cell[] {
  const { need, made, scrapped, extra, bendsNeed, bendsMade, minutes } = sums;
  const unknown = labor && noMinutes.size > 0;
  const notes = [
    ...(extra > 0 ? [`${extra} made beyond what is needed`] : []),
    ...(unknown ? [`no minutes for ${[...noMinutes].sort().join(", ")}`] : []),
  ];
  const hours = unknown && minutes === 0 ? "" : minutes / 60;
  return [
    ...group,
    ...[need, made, need - made, scrapped, bendsNeed, bendsMade, bendsNeed - bendsMade],
    ...(labor ? [hours] : []),
    notes.join("; "),
  ];
}
