import { Button } from "@fluentui/react-components";
import { useState } from "react";
import type { DrawnRow, DrawnRows } from "../../src/drawn/drawnRows";
import { notReadWords } from "../../src/drawn/notReadWords";
import { useUnits } from "../hooks/useUnits";
import { drawnStrings as t } from "./drawnStrings";

/** Rows and things not read that are listed at first: a long list would hold the pane up. */
const SHOWN = 60;

/** What is to be looked at first: what is not taken, then what is off, then what is drawn otherwise. */
const weight = ({ taken, words, note }: DrawnRow): number => {
  if (!taken) return 0;
  if (words !== "as drawn") return 1;
  return note === "" ? 3 : 2;
};

/** The runs of a drawing before they are added: route, lengths, how near to the drawing; and what was not read. */
export function DrawnPreview({ found: { rows, notRead, turned } }: { found: DrawnRows }) {
  const { show } = useUnits();
  const [isWhole, setWhole] = useState(false);
  const inTurn = rows.length > SHOWN ? [...rows].sort((a, b) => weight(a) - weight(b)) : rows;
  const taken = rows.filter((row) => row.taken);
  const asDrawn = taken.filter(({ words }) => words === "as drawn");
  return (
    <>
      <p>{t.found(taken.length, asDrawn.length, rows.length - taken.length)}</p>
      {turned !== 0 && <p className="rl-hint">{t.turned(turned.toFixed(2))}</p>}
      <ul className="rl-drawn">
        {inTurn.slice(0, isWhole ? undefined : SHOWN).map((row, at) => (
          <li key={at} data-taken={row.taken}>
            <strong>{row.run}</strong> {row.raceway} {row.size}, {row.words}
            {row.route !== "" && <div className="rl-route">{row.route}</div>}
            {row.writtenLength !== undefined && (
              <div className="rl-hint">{t.lengths(show(row.drawnLength), show(row.writtenLength))}</div>
            )}
            {row.note !== "" && <div className="rl-hint">{row.note}</div>}
          </li>
        ))}
      </ul>
      {rows.length > SHOWN && !isWhole && (
        <Button size="small" onClick={() => setWhole(true)}>
          {t.whole(rows.length - SHOWN)}
        </Button>
      )}
      {notRead.length > 0 && (
        <details>
          <summary>{t.notRead(notRead.length)}</summary>
          <ul className="rl-drawn">
            {notRead.slice(0, 5 * SHOWN).map((one, at) => (
              <li key={at}>{notReadWords(one)}</li>
            ))}
            {notRead.length > 5 * SHOWN && <li>{t.more(notRead.length - 5 * SHOWN)}</li>}
          </ul>
        </details>
      )}
    </>
  );
}
