import type { CutPattern, CutPlan } from "../../cutting";

/**
 * The lines of a plan in the order of sawing, each with its cuts in theirs. All sticks of a line are cut together, length
 * after length; the next line begins, if it can, with the length that the stop stands at. Our choice, no source.
 */
export function sawOrder({ patterns, stocks }: Pick<CutPlan, "patterns" | "stocks">): CutPattern[] {
  const waiting = new Waiting(patterns, (pattern) => stopLengths(pattern, stocks));
  const ordered: CutPattern[] = [];
  let stop: number | undefined;
  for (;;) {
    const next = waiting.take(stop);
    if (!next) return ordered;
    const last = lastCut(next.lengths, stop, (length) => waiting.has(length));
    const place = (length: number): number => (length === stop ? -1 : length === last ? 1 : 0);
    const cuts = [...next.pattern.cuts].sort((a, b) => place(a.length) - place(b.length) || b.length - a.length);
    ordered.push({ ...next.pattern, cuts });
    stop = last ?? stop;
  }
}

/** How often the stop of the saw is set for lines in this order. */
export function stopSettings(ordered: readonly CutPattern[], stocks: CutPlan["stocks"]): number {
  const settings = ordered.flatMap((pattern) => stopLengths(pattern, stocks));
  return settings.filter((length, index) => length !== settings[index - 1]).length;
}

/** Lengths that a line is cut to; a piece as long as its stick is not cut. */
const stopLengths = ({ cuts, stock }: CutPattern, stocks: CutPlan["stocks"]): number[] =>
  cuts.map(({ length }) => length).filter((length) => length !== stocks[stock]!.length);

/** The length that the stop stands at when a line is done: one that another line goes on with, or the shortest. */
function lastCut(lengths: readonly number[], first: number | undefined, isWanted: (length: number) => boolean) {
  const free = lengths.length > 1 ? lengths.filter((length) => length !== first) : lengths;
  return free.find(isWanted) ?? free.at(-1);
}

interface Line {
  readonly pattern: CutPattern;
  readonly lengths: readonly number[];
}

/** Lines that are not cut yet, found by a length they need. */
class Waiting {
  private readonly lines: Set<Line>;
  private readonly byLength = new Map<number, Set<Line>>();

  constructor(patterns: readonly CutPattern[], lengthsOf: (pattern: CutPattern) => readonly number[]) {
    this.lines = new Set(patterns.map((pattern) => ({ pattern, lengths: lengthsOf(pattern) })));
    for (const line of this.lines) {
      for (const length of line.lengths) {
        const there = this.byLength.get(length);
        if (there) there.add(line);
        else this.byLength.set(length, new Set([line]));
      }
    }
  }

  has(length: number): boolean {
    return (this.byLength.get(length)?.size ?? 0) > 0;
  }

  /** A line that needs the length, of several the one with the fewest others; else the first there is. */
  take(length: number | undefined): Line | undefined {
    const fitting = length === undefined ? undefined : this.byLength.get(length);
    let next: Line | undefined;
    for (const line of fitting ?? []) if (!next || line.lengths.length < next.lengths.length) next = line;
    next ??= this.lines.values().next().value;
    if (!next) return undefined;
    this.lines.delete(next);
    for (const each of next.lengths) this.byLength.get(each)?.delete(next);
    return next;
  }
}
