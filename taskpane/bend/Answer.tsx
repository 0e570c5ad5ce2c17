import { isElbowRow, type ScheduleRow } from "../../src/shop/schedule/schedule";
import { useUnits } from "../hooks/useUnits";
import { throughRun } from "../run/throughRun";
import { strings } from "../strings";

const t = strings.bend;

/** What a bend comes to, at a glance: the cut of each piece and its marks, by the numbers of their bends. */
export function Answer({ rows }: { rows: readonly ScheduleRow[] }) {
  const units = useUnits();
  const through = throughRun(rows);
  const pieces = [...new Set(rows.filter((row) => !isElbowRow(row)).map(({ Piece }) => Number(Piece)))];
  return (
    <section className="rl-answer" aria-label={t.answer}>
      {pieces.map((piece) => {
        const own = rows.filter(({ Piece }) => Number(Piece) === piece);
        const marks = own
          .filter(({ Mark }) => Mark !== "")
          .sort((one, other) => through.get(one)! - through.get(other)!);
        const cut = units.show(Number(own[0]?.["Cut length"]));
        return (
          <p key={piece}>
            <strong>{pieces.length > 1 ? t.cutPiece(piece, cut) : t.cut(cut)}</strong>
            {marks.length > 0 && (
              <span>
                {t.marksAt} {marks.map((row) => t.markAt(through.get(row)!, units.show(Number(row.Mark)))).join(" · ")}
              </span>
            )}
          </p>
        );
      })}
    </section>
  );
}
