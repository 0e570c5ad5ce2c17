import type { DrawnRows } from "../../src/drawn/drawnRows";
import { notReadWords } from "../../src/drawn/notReadWords";
import { useUnits } from "../hooks/useUnits";
import { drawnStrings as t } from "./drawnStrings";

/** The runs of a drawing before they are added: route, lengths, how near to the drawing; and what was not read. */
export function DrawnPreview({ found: { rows, notRead, turned } }: { found: DrawnRows }) {
  const { show } = useUnits();
  const taken = rows.filter((row) => row.taken);
  const asDrawn = taken.filter(({ words }) => words === "as drawn");
  return (
    <>
      <p>{t.found(taken.length, asDrawn.length, rows.length - taken.length)}</p>
      {turned !== 0 && <p className="rl-hint">{t.turned(turned.toFixed(2))}</p>}
      <ul className="rl-drawn">
        {rows.map((row) => (
          <li key={`${row.run} ${row.start}`} data-taken={row.taken}>
            <strong>{row.run}</strong> {row.raceway} {row.size}, {row.words}
            {row.route !== "" && <div className="rl-route">{row.route}</div>}
            {row.writtenLength !== undefined && (
              <div className="rl-hint">{t.lengths(show(row.drawnLength), show(row.writtenLength))}</div>
            )}
            {row.note !== "" && <div className="rl-hint">{row.note}</div>}
          </li>
        ))}
      </ul>
      {notRead.length > 0 && (
        <details>
          <summary>{t.notRead(notRead.length)}</summary>
          <ul className="rl-drawn">
            {notRead.map((one, at) => (
              <li key={at}>{notReadWords(one)}</li>
            ))}
          </ul>
        </details>
      )}
    </>
  );
}
