import { buildJob } from "../../shop/job/job";
import { naturalOrder } from "../../units/names/naturalOrder";
import { readMade } from "../records/madeTable";
import { tallyJob } from "./tally";

type Cell = string | number;

/** What a daily count may be given besides the runs and what was made. */
export interface DailyRanges {
  readonly shoes?: unknown;
  readonly rules?: unknown;
}

/** One day of one crew. */
interface Day {
  readonly date: string;
  readonly crew: string;
  made: number;
  scrapped: number;
  bends: number;
}

/**
 * What each crew made and scrapped each day, and how many pieces of the job were left after it, as a table with a header
 * row, day by day. A crew is the record's Crew, else its By. Pieces beyond what is needed, and those of no run of this
 * job, are not counted here; JOB.PROGRESS names them.
 *
 * @throws InputError when a range lacks a needed column
 */
export function daily(runs: unknown, made: unknown, ranges: DailyRanges = {}): Cell[][] {
  const { pieces } = tallyJob(buildJob({ runs, ...ranges }), readMade(made));
  const days = new Map<string, Day>();
  for (const { shares, piece } of pieces) {
    for (const { record, good, scrapped } of shares) {
      const crew = record.crew || record.by;
      const key = JSON.stringify([record.date, crew]);
      const day = days.get(key) ?? { date: record.date, crew, made: 0, scrapped: 0, bends: 0 };
      days.set(key, day);
      day.made += good;
      day.scrapped += scrapped;
      day.bends += good * piece.bends.length;
    }
  }
  let left = pieces.reduce((sum, { quantity }) => sum + quantity, 0);
  const sorted = [...days.values()].sort((a, b) => naturalOrder(a.date, b.date) || naturalOrder(a.crew, b.crew));
  return [
    ["Date", "Crew", "Pieces made", "Pieces scrapped", "Bends made", "Pieces left"],
    ...sorted.map(({ date, crew, made, scrapped, bends }) => {
      left -= made;
      return [date || "no date", crew, made, scrapped, bends, left];
    }),
  ];
}
