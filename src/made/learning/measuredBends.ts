import { readRaceway, type Raceway } from "../../raceway/raceway";
import { readTradeSize, type TradeSize } from "../../raceway/tradeSize";
import { buildJob } from "../../shop/job/job";
import { InputError, isUserError } from "../../units/errors";
import type { BendMeasured, MadeBook, MadeRecord } from "../records/madeTable";
import { neededPieces, PieceFinder, type NeededPiece } from "../counts/neededPieces";

/** A measured bend and the shoe it was made on. */
export interface MeasuredBend {
  readonly record: MadeRecord;
  readonly measured: BendMeasured;
  readonly raceway: Raceway;
  readonly size: TradeSize;
  /** The angle it should have [°]; undefined where the runs do not tell. */
  readonly wanted?: number;
}

/** What the runs must be, where records do not say on what shoe they were made. */
export interface LearnRanges {
  readonly shoes?: unknown;
  readonly runs?: unknown;
  readonly rules?: unknown;
}

/** Finds the shoe and the wanted angle of every measured bend; those for which that cannot be told come back in words. */
export function measuredBends(
  { records }: MadeBook,
  { runs, ...ranges }: LearnRanges,
): { bends: MeasuredBend[]; problems: string[] } {
  const known = runs === null || runs === undefined ? [] : neededPieces(buildJob({ runs, ...ranges }));
  const finder = new PieceFinder(known);
  const bends: MeasuredBend[] = [];
  const problems: string[] = [];
  for (const record of records) {
    const { measured } = record;
    if (!measured) continue;
    try {
      bends.push({ record, measured, ...shoeOf(record, measured, finder.find(record.piece)[0]) });
    } catch (error) {
      if (!isUserError(error)) throw error;
      problems.push(`made row ${record.rowNumber}: ${error.message}`);
    }
  }
  return { bends, problems };
}

function shoeOf(
  { raceway, size, piece }: MadeRecord,
  { bend }: BendMeasured,
  named: NeededPiece | undefined,
): Pick<MeasuredBend, "raceway" | "size" | "wanted"> {
  if (raceway !== "" && size !== "") {
    const own = { raceway: readRaceway(raceway, "Raceway"), size: readTradeSize(size, "Size") };
    return { ...own, wanted: named?.shape.bends[bend - 1]?.angle };
  }
  if (!named) throw new InputError(`${piece} names no piece of the runs; give Raceway and Size, or the runs it is of.`);
  const wanted = named.shape.bends[bend - 1]?.angle;
  if (wanted === undefined) {
    throw new InputError(`Bend must be one of the ${named.shape.bends.length} bends of ${named.name}; got ${bend}.`);
  }
  return { raceway: named.row.run.raceway, size: named.row.run.size, wanted };
}

/** Bends by their shoe, in the order of the records. */
export function byShoe(bends: readonly MeasuredBend[]): Map<string, MeasuredBend[]> {
  const shoes = new Map<string, MeasuredBend[]>();
  for (const bend of bends) {
    const key = `${bend.raceway} ${bend.size}`;
    const own = shoes.get(key) ?? [];
    shoes.set(key, own);
    own.push(bend);
  }
  return shoes;
}
