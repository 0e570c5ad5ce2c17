import { buildJob, unbuiltRows, type Job } from "../../shop/job/job";
import type { PieceShape } from "../../shop/run/pieceShape";
import { formatLength } from "../../units/length";
import { PUT_UP_LENGTH } from "../../units/tolerances";
import { InputError } from "../../units/errors";
import { fitOf, fitsAsItIs, longestStraight, type PieceFit } from "./fits";
import { readMade, type MadeRecord } from "../records/madeTable";
import { bestMatching, isProven, type Edge } from "./matching";
import { neededPieces, PieceFinder, type NeededPiece } from "../counts/neededPieces";

type Cell = string | number;

/** What a standing may be given besides the runs and what was made. */
export interface StandingRanges {
  /** The runs as they were when the pieces were made; left out: the runs themselves. */
  readonly issued?: unknown;
  readonly shoes?: unknown;
  readonly rules?: unknown;
}

export const STANDING_HEADERS = ["Made", "Shape", "Pieces", "Standing", "For", "To do", "Straight"] as const;

/** Most different pieces on either side that a matching is worked out for. */
const MOST = 3000;

/** Worth of a piece that need not be made again; above all the work that could be spared by another choice. */
const SERVED = 1_000_000;
/** What work takes off that worth: another run's ticket, one cut, two cuts, one more bend. */
const WORK = { otherRun: 1, cut: 100, bend: 10_000 };

/** Pieces of one shape that were made for one needed piece. */
interface MadeLot {
  readonly name: string;
  readonly code: string;
  readonly shape: PieceShape;
  count: number;
}

/** How some of a lot can serve for a needed piece. */
interface Use extends Edge {
  readonly fit: PieceFit;
}

/**
 * What a change of the runs leaves standing: for all that was made, whether it stands as it is, fits another run, fits
 * after a cut or one more bend, or is left over, with the straight conduit on it; then what is to be made again, as few
 * pieces as can be, with its proof. A table with a header row.
 *
 * @throws InputError when a range lacks a needed column, or there are more different pieces than can be matched
 */
export function standing(runs: unknown, made: unknown, ranges: StandingRanges = {}): Cell[][] {
  const job = buildJob({ runs, ...ranges });
  const issued = ranges.issued === null || ranges.issued === undefined ? job : issuedJob(ranges);
  const book = readMade(made);
  const { lots, unknown } = madeLots(book.records, [...neededPieces(issued), ...neededPieces(job)]);
  const needed = neededPieces(job);
  for (const [what, count] of [
    ["made", lots.length],
    ["runs", needed.length],
  ] as const) {
    if (count > MOST) throw new InputError(`${what} must have at most ${MOST} different pieces; got ${count}.`);
  }
  const uses = usesOf(lots, needed);
  const [supply, demand] = [lots.map(({ count }) => count), needed.map(({ quantity }) => quantity)];
  const matching = bestMatching(supply, demand, uses);
  if (!isProven(supply, demand, uses, matching)) throw new RangeError("the matching failed its own check");
  const again = needed.map((piece, place) => ({
    piece,
    count: piece.quantity - given(uses, matching.given, "place", place),
  }));
  return [
    [...STANDING_HEADERS],
    ...lots.flatMap((lot, thing) => lotRows(lot, thing, needed, uses, matching.given)),
    ...again.flatMap(({ piece, count }) => (count > 0 ? [makeRow(piece, count)] : [])),
    totalRow(again.reduce((sum, { count }) => sum + count, 0)),
    ...unknown.map(({ record, reason }) => words(`made row ${record.rowNumber}: ${record.piece}`, reason)),
    ...unbuiltRows(job).map(({ name, problem }) => words(`not built: ${name}`, problem)),
    ...book.problems.map((problem) => words("not read", problem)),
  ];
}

const issuedJob = ({ issued, shoes, rules }: StandingRanges): Job =>
  buildJob({ runs: issued, shoes, rules, argument: "issued" });

/** Good pieces by what they were made for and their shape; and the records whose shape is not known. */
function madeLots(records: readonly MadeRecord[], known: readonly NeededPiece[]) {
  const finder = new PieceFinder(known);
  const byCode = new Map(known.map(({ code, shape }) => [code, shape]));
  const lots = new Map<string, MadeLot>();
  const unknown: { record: MadeRecord; reason: string }[] = [];
  for (const record of records) {
    if (record.good === 0) continue;
    const named = finder.find(record.piece)[0];
    const shape = record.shape ? byCode.get(record.shape) : named?.shape;
    if (!shape) {
      const what = record.shape
        ? `no run here or in issued has the shape ${record.shape}`
        : "no run here or in issued has that piece";
      unknown.push({ record, reason: `${what}; give the runs it was made from as issued` });
      continue;
    }
    const name = named?.name ?? record.piece;
    const code = record.shape || named!.code;
    const key = JSON.stringify([name, code]);
    const lot = lots.get(key) ?? { name, code, shape, count: 0 };
    lots.set(key, lot);
    lot.count += record.good;
  }
  return { lots: [...lots.values()], unknown };
}

/** Every way a made piece can serve, its own place first. */
function usesOf(lots: readonly MadeLot[], needed: readonly NeededPiece[]): Use[] {
  const fits = new Map<string, PieceFit | undefined>();
  return lots.flatMap(({ name, code, shape }, thing) =>
    needed.flatMap((piece, place): Use[] => {
      if (piece.shape.size !== shape.size || piece.shape.raceway !== shape.raceway) return [];
      const key = `${code} ${piece.code}`;
      if (!fits.has(key)) fits.set(key, fitOf(shape, piece.shape));
      const fit = fits.get(key);
      return fit ? [{ thing, place, fit, worth: SERVED - workOf(fit, piece.name === name) }] : [];
    }),
  );
}

function workOf(fit: PieceFit, ownPlace: boolean): number {
  const cuts = [fit.cutDatum, fit.cutFar].filter((cut) => cutWords(cut) !== "").length;
  return (ownPlace ? 0 : WORK.otherRun) + WORK.cut * cuts + (fit.bend === undefined ? 0 : WORK.bend);
}

const given = (uses: readonly Use[], counts: readonly number[], of: "thing" | "place", index: number): number =>
  uses.reduce((sum, use, at) => sum + (use[of] === index ? counts[at]! : 0), 0);

function lotRows(
  { name, code, shape, count }: MadeLot,
  thing: number,
  needed: readonly NeededPiece[],
  uses: readonly Use[],
  counts: readonly number[],
): Cell[][] {
  const rows = uses.flatMap((use, at): Cell[][] => {
    if (use.thing !== thing || counts[at] === 0) return [];
    const piece = needed[use.place]!;
    return [[name, code, counts[at]!, standingWords(use.fit, piece.name === name), piece.name, toDo(use.fit), ""]];
  });
  const over = count - given(uses, counts, "thing", thing);
  const straight = longestStraight(shape);
  return over === 0
    ? rows
    : [...rows, [name, code, over, "left over", "", "cut off what is straight, for Stock", straight]];
}

function standingWords(fit: PieceFit, ownPlace: boolean): string {
  if (fit.bend !== undefined) return "fits after one more bend";
  if (!fitsAsItIs(fit)) return "fits if cut shorter";
  return ownPlace ? "stands as it is" : "fits another run";
}

function toDo({ cutDatum, cutFar, bend, around }: PieceFit): string {
  const [datum, far] = around ? ["far", "datum"] : ["datum", "far"];
  const cuts = [
    [cutDatum, datum],
    [cutFar, far],
  ].flatMap(([cut, end]) => (cutWords(Number(cut)) === "" ? [] : [`cut ${cutWords(Number(cut))} off its ${end} end`]));
  const parts = [
    ...cuts,
    ...(around && bend === undefined && cuts.length === 0 ? ["turn it end for end"] : []),
    ...(bend === undefined ? [] : [`make bend ${bend} of the ticket; see that the shoe has room`]),
  ];
  return parts.join(", ");
}

/** A cut to the nearest sixteenth; nothing for less than one. */
const cutWords = (inches: number): string => (inches < PUT_UP_LENGTH ? "" : formatLength(inches, 16, "feet"));

const makeRow = ({ name, code }: NeededPiece, count: number): Cell[] => [...["", code, count, "to make", name, "", ""]];

const totalRow = (count: number): Cell[] => [
  ...["Total", "", count, "to make", "", "proven: no choice needs fewer", ""],
];

const words = (what: string, reason: string): Cell[] => [what, "", "", "", "", reason, ""];
