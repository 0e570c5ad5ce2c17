import { useMemo } from "react";
import { changeOrder } from "../../src/bid/change/changeOrder";
import { showMoney } from "../../src/units/money";
import { attempt } from "../components/attempt";
import { Notice } from "../components/Notice";
import type { TableCells } from "../excel";
import { useLedger } from "../hooks/useLedger";
import { strings } from "../strings";
import { recordsOf } from "../workbook/recordsOf";
import { orderTables } from "./orderTables";

const t = strings.totals.changes;

/** What a change comes to by the Bid table, line by line; nothing where the workbook has none. */
export function PricedChange({ before }: { before: { runs: TableCells; counts: TableCells | undefined } }) {
  const { tables } = useLedger();
  const { Bid, Runs, Costs, Factors } = tables;
  const found = useMemo(() => {
    if (!Bid) return undefined;
    const lists = { ...orderTables(tables), costs: Costs?.cells, factors: Factors?.cells };
    const counts = before.counts ? { countsBefore: before.counts.cells } : { counts: undefined };
    return attempt(() => recordsOf(changeOrder(before.runs.cells, Runs?.cells, Bid.cells, { ...lists, ...counts })));
  }, [before, tables, Bid, Runs, Costs, Factors]);
  if (!found) return null;
  if (!found.value) return <Notice intent="error">{found.problem}</Notice>;
  const lines = found.value.filter(({ Change }) => PRICED.includes(String(Change)));
  const notes = found.value.filter(({ Change }) => Change === "note");
  return (
    <table className="rl-table">
      <caption>{t.priced}</caption>
      <tbody>
        {lines.map((line, index) => (
          <tr key={index}>
            <th scope="row">
              {line.Change === "price" ? line["Item or line"] : <strong>{line["Item or line"]}</strong>}
              {line.Change === "total" && notes.length > 0 && <div className="rl-hint">{t.without(notes.length)}</div>}
            </th>
            <td className="rl-number">{signedMoney(Number(line.Difference))}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

const PRICED = ["price", "subtotal", "total"];

const signedMoney = (amount: number): string => `${amount > 0 ? "+" : ""}${showMoney(amount)}`;
