import { progress } from "../made/counts/progress";
import type { Bar, OverviewPart } from "./part";

/** A Made table in which nothing stands. */
const NOTHING_MADE = [["Date", "Piece", "Good"]];
const PIECES = ["Pieces made", "Pieces left", "Pieces scrapped"];
const BENDS = ["Bends made", "Bends left"];

/** Pieces and bends that are made and left, as JOB.PROGRESS counts them. */
export function progressPart(
  runs: unknown,
  { made, shoes, rules }: { made?: unknown; shoes?: unknown; rules?: unknown },
): OverviewPart {
  const [header = [], total = []] = progress(runs, made ?? NOTHING_MADE, { by: "none", shoes, rules });
  const bar = (column: string, unit: string): Bar => ({
    ...{ label: column, unit },
    amount: Number(total[header.indexOf(column)]),
  });
  const bars = [...PIECES.map((column) => bar(column, "pieces")), ...BENDS.map((column) => bar(column, "bends"))];
  const isEmpty = bars.every(({ amount }) => amount === 0);
  const name = "Progress";
  if (isEmpty) return { name, unit: "pieces", bars: [], note: "nothing to make: no run of the job could be counted" };
  return { name, unit: "pieces", bars, note: bars[0]!.amount === 0 ? "nothing is made yet" : "" };
}
