import { isElbowRow, type ScheduleRow } from "../../src/shop/schedule/schedule";

/**
 * The number of each bend through the whole run, as drawings of the run have it, by its row of the schedule: pieces count
 * their bends from 1, factory elbows stand between them.
 */
export function throughRun(rows: readonly ScheduleRow[]): Map<ScheduleRow, number> {
  const numbers = new Map<ScheduleRow, number>();
  let [before, inPiece] = [0, 0];
  rows.forEach((row, place) => {
    const last = rows[place - 1];
    if (last === undefined || isElbowRow(row) || isElbowRow(last) || row.Piece !== last.Piece) {
      before += inPiece;
      inPiece = 0;
    }
    if (!isElbowRow(row) && row.Bend === "") return;
    inPiece += 1;
    numbers.set(row, before + (isElbowRow(row) ? 1 : Number(row.Bend)));
  });
  return numbers;
}
