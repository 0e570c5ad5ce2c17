import { Button } from "@fluentui/react-components";
import { useState } from "react";
import { changeOrder } from "../../../src/bid/change/changeOrder";
import { recapTable } from "../../../src/bid/recap";
import { standing } from "../../../src/made/standing/standing";
import { orderForm } from "../../../src/takeoff/reports/orderForm";
import { attempt, type Attempt } from "../../components/attempt";
import { Choice } from "../../components/Choice";
import { Notice } from "../../components/Notice";
import { saveText } from "../../components/saveText";
import { Section } from "../../components/Section";
import { useKept } from "../../hooks/useKept";
import { useLedger, type Ledger } from "../../hooks/useLedger";
import { useMade } from "../../made/useMade";
import { printHtml } from "../../tickets/paper/printHtml";
import type { Cell } from "../../workbook/items";
import { orderTables } from "../orderTables";
import { bidDocument, wordsOfBid } from "./bidDocument";
import { overviewStrings } from "./overviewStrings";

const t = overviewStrings.paper;
const KINDS = ["recap", "order", "change"] as const;
type Kind = (typeof KINDS)[number];
const WHEN = { dateStyle: "medium", timeStyle: "short" } as const;

/** Recap, order form and change order, to print or to save as PDF. */
export function PaperPart() {
  const { tables } = useLedger();
  const { made } = useMade();
  const [kind, setKind] = useKept<Kind>("overview.paper", "recap");
  const [problem, setProblem] = useState("");
  const [saved, setSaved] = useState("");
  const title = t.kinds[kind];
  const put = (onto: (html: string) => void) => {
    setSaved("");
    const { value: table, problem: found = "" } = tableOf(kind, tables, made?.cells);
    setProblem(found);
    if (!table) return;
    const printed = new Date().toLocaleString(undefined, WHEN);
    onto(bidDocument(title, table, { words: wordsOfBid(tables.Bid?.cells), printed }));
  };
  const file = `${title}.html`;
  return (
    <Section title={t.title}>
      <Choice<Kind>
        label={t.what}
        value={kind}
        options={KINDS.map((value) => ({ value, text: t.kinds[value] }))}
        onChange={(next) => {
          setKind(next);
          setProblem("");
          setSaved("");
        }}
      />
      <div className="rl-row">
        <Button appearance="primary" onClick={() => put(printHtml)}>
          {t.print}
        </Button>
        <Button
          onClick={() =>
            put((html) => {
              saveText(html, file, "text/html");
              setSaved(file);
            })
          }
        >
          {t.save}
        </Button>
      </div>
      {problem && <Notice intent="error">{problem}</Notice>}
      {saved && <Notice intent="success">{t.saved(saved)}</Notice>}
    </Section>
  );
}

type Table = (string | number)[][];

/** The table that goes on paper, or why there is none. */
function tableOf(kind: Kind, tables: Ledger["tables"], made: Cell[][] | undefined): Attempt<Table> {
  const { Runs, Bid, Costs, Factors, Issued } = tables;
  const lists = orderTables(tables);
  const all = { ...lists, costs: Costs?.cells, factors: Factors?.cells };
  if (kind === "order") return attempt(() => orderForm(Runs?.cells, lists));
  if (!Bid) return { problem: t.noBid };
  if (kind === "recap") return attempt(() => recapTable(Runs?.cells, Bid.cells, all));
  const isIssued = Issued?.cells.slice(1).some((row) => row.some((cell) => cell !== "")) ?? false;
  if (!Issued || !isIssued) return { problem: t.noIssue };
  const issued = Issued.cells;
  return attempt(() => {
    const left = made && standing(Runs?.cells, made, { issued, shoes: all.shoes, rules: all.rules });
    return changeOrder(issued, Runs?.cells, Bid.cells, { ...all, standing: left });
  });
}
