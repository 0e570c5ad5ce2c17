import { controlLimits } from "./controlChart";
import { readMade } from "../records/madeTable";
import { byShoe, measuredBends, type LearnRanges } from "./measuredBends";

type Cell = string | number;

export const CHART_HEADERS = [
  ...["Raceway", "Size", "Date", "Piece", "Bend", "Error", "Mean", "Lower", "Upper", "Step", "Largest step", "Verdict"],
] as const;

/** Fewer bends than this have no limits worth drawing. Our choice, no source. */
const FEWEST = 3;

/**
 * A chart of angle errors (measured less wanted) for each shoe, as a table with a header row: each bend in the order of the
 * records, with the limits of single values and of the step from the bend before.
 *
 * @throws InputError when a range lacks a needed column
 */
export function chart(made: unknown, runs: unknown, ranges: Omit<LearnRanges, "runs"> = {}): Cell[][] {
  const book = readMade(made);
  const { bends, problems } = measuredBends(book, { ...ranges, runs });
  const known = bends.flatMap((bend) => (bend.wanted === undefined ? [] : [{ ...bend, wanted: bend.wanted }]));
  const rows = [...byShoe(known).values()].flatMap((own): Cell[][] => {
    const errors = own.map(({ measured, wanted }) => measured.angle - wanted!);
    const limits = own.length < FEWEST ? undefined : controlLimits(errors);
    return own.map(({ raceway, size, record, measured }, index) => {
      const error = errors[index]!;
      const step = index === 0 ? "" : Math.abs(error - errors[index - 1]!);
      const place: Cell[] = [raceway, size, record.date, record.piece, measured.bend, error];
      if (!limits) return [...place, "", "", "", step, "", `too few for limits: ${FEWEST} are needed`];
      const { mean, lower, upper, largestStep } = limits;
      const outside = error < lower || error > upper || (step !== "" && step > largestStep);
      return [...place, mean, lower, upper, step, largestStep, outside ? "outside the limits" : ""];
    });
  });
  const unknown = bends.flatMap(({ record, wanted }) =>
    wanted === undefined ? [`made row ${record.rowNumber}: ${record.piece} names no bend of the runs`] : [],
  );
  const told = [...book.problems, ...problems, ...unknown].map((problem): Cell[] => [
    "not read",
    ...CHART_HEADERS.slice(2).map(() => ""),
    problem,
  ]);
  return [[...CHART_HEADERS], ...rows, ...told];
}
