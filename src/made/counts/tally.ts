import { remember } from "../../memory/remember";
import type { Job } from "../../shop/job/job";
import type { MadeBook, MadeRecord } from "../records/madeTable";
import { neededPieces, PieceFinder, type NeededPiece } from "./neededPieces";

/** A part of a record that counts for a piece. */
export interface Share {
  readonly record: MadeRecord;
  /** Good ones up to what the piece is needed, then those beyond. */
  readonly good: number;
  readonly extra: number;
  readonly scrapped: number;
}

/** A needed piece with what was made of it. */
export interface PieceTally extends NeededPiece {
  readonly shares: readonly Share[];
  readonly made: number;
  readonly left: number;
  /** Made beyond what is needed. */
  readonly extra: number;
  readonly scrapped: number;
}

/** What was made of a job, piece by piece. */
export interface JobTally {
  readonly pieces: readonly PieceTally[];
  /** Records that name no piece of this job, with the reason. */
  readonly strangers: readonly { readonly record: MadeRecord; readonly reason: string }[];
}

/**
 * Counts records for the pieces they name, in their order. Where several rows share a name, a record counts for the first
 * that still lacks some. A record with the code of a shape counts only for pieces of that shape.
 */
export const tallyJob: (job: Job, made: MadeBook) => JobTally = remember((job, made) => {
  const pieces = neededPieces(job);
  const finder = new PieceFinder(pieces);
  const counts = new Map(pieces.map((piece) => [piece, { shares: [] as Share[], left: piece.quantity }]));
  const strangers: JobTally["strangers"][number][] = [];
  for (const record of made.records) {
    const named = finder.find(record.piece);
    const found = named.filter(({ code }) => record.shape === "" || code === record.shape);
    const target = found.find((piece) => counts.get(piece)!.left > 0) ?? found[0];
    if (!target) {
      strangers.push({ record, reason: named[0] ? otherShape(record, named[0]) : strangeness(job, record.piece) });
      continue;
    }
    const count = counts.get(target)!;
    const good = Math.min(record.good, count.left);
    count.left -= good;
    count.shares.push({ record, good, extra: record.good - good, scrapped: record.scrapped });
  }
  return { pieces: pieces.map((piece) => tallyOf(piece, counts.get(piece)!)), strangers };
});

function tallyOf(piece: NeededPiece, { shares, left }: { shares: Share[]; left: number }): PieceTally {
  const sum = (pick: (share: Share) => number) => shares.reduce((total, share) => total + pick(share), 0);
  return {
    ...{ ...piece, shares, left, made: piece.quantity - left },
    extra: sum(({ extra }) => extra),
    scrapped: sum(({ scrapped }) => scrapped),
  };
}

/** What was made before a run changed is no progress on what it is now. */
const otherShape = ({ shape }: MadeRecord, { name, code }: NeededPiece): string =>
  `made as ${shape}, and ${name} is ${code} now: JOB.STANDING says what it fits`;

/** Why a record names no piece. */
function strangeness(job: Job, piece: string): string {
  const run = piece.replace(/\/[^/]*$/, "");
  const rows = job.rows.filter(({ name }) => name === run || name === piece);
  if (rows.length === 0) return "no run of this job has that name";
  const problem = rows.flatMap((row) => ("problem" in row ? [row.problem] : []))[0];
  if (problem !== undefined) return `the run is not built: ${problem}`;
  return `the run has other pieces; write its name and the number of the piece, as in ${run}/1`;
}
