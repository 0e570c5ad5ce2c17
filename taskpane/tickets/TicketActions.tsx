import { Button, Checkbox, ProgressBar } from "@fluentui/react-components";
import { ArrowDownloadRegular, DocumentTableRegular, PrintRegular } from "@fluentui/react-icons";
import { useState } from "react";
import type { Ticket } from "../../src/shop/ticket/ticket";
import { Choice } from "../components/Choice";
import { Notice } from "../components/Notice";
import { Section } from "../components/Section";
import { SheetButton } from "../components/SheetButton";
import { useTask } from "../hooks/useTask";
import type { TableCells } from "../excel";
import { useKept } from "../hooks/useKept";
import { useWorkbook } from "../hooks/useWorkbook";
import { strings } from "../strings";
import { ticketStrings as t } from "./ticketStrings";
import { useCuts } from "./useCuts";
import { usePaper, type Paper } from "./usePaper";

/** Prints tickets or stickers, saves them as a page, or puts them in the workbook: in the ways that this Excel has. */
export function TicketActions({
  tickets,
  issue,
  straight,
  rows,
  made,
}: {
  tickets: readonly Ticket[];
  /** What the runs were last issued as; empty where they never were. */
  issue: string;
  /** Straight pieces without a ticket: they stand on the cutting sheet. */
  straight: number;
  /** The rows of Runs that the cutting sheet is made for. */
  rows: readonly number[];
  /** The Made table, where only what is not yet made is wanted: the cutting sheet leaves the rest out too. */
  made: TableCells | undefined;
}) {
  const task = useTask();
  const workbook = useWorkbook();
  const [paper, setPaper] = useKept<Paper>("tickets.pages", "one");
  const [cutsAsked, setWithCuts] = useKept<boolean | undefined>("tickets.cuts", undefined);
  const withCuts = cutsAsked ?? straight > 0;
  const [done, setDone] = useState("");
  const cuts = useCuts(rows, made);
  const to = usePaper({ tickets, issue, straight, paper, plan: withCuts ? cuts.plan : undefined });

  const { prints, saves, workbookFirst } = workbook.waysOut();
  const toSheet = { text: t.toSheet, icon: <DocumentTableRegular />, go: to.toSheet };
  const ways = [
    ...(workbookFirst ? [toSheet] : []),
    ...(prints ? [{ text: t.print, icon: <PrintRegular />, go: to.print }] : []),
    ...(saves ? [{ text: t.save, icon: <ArrowDownloadRegular />, go: to.save }] : []),
    ...(workbookFirst ? [] : [toSheet]),
  ];
  const start = (action: () => Promise<string>) => {
    setDone("");
    void task.run(async () => setDone(await action()));
  };
  return (
    <Section title={t.paper}>
      <Choice<Paper>
        label={t.pages}
        value={paper}
        options={[
          { value: "one", text: t.onePage },
          { value: "together", text: t.together },
          { value: "stickers", text: t.labels },
        ]}
        onChange={setPaper}
      />
      {paper !== "stickers" && (
        <Checkbox label={t.cutSheet} checked={withCuts} onChange={(_, data) => setWithCuts(data.checked === true)} />
      )}
      <div className="rl-row">
        {ways.map(({ text, icon, go }, place) => (
          <SheetButton
            key={text}
            appearance={place === 0 ? "primary" : "secondary"}
            icon={icon}
            disabledFocusable={task.busy}
            onClick={() => start(go)}
          >
            {text}
          </SheetButton>
        ))}
      </div>
      {cuts.title !== undefined && (
        <div className="rl-row" role="status">
          <span>{t.planning(cuts.title)}</span>
          <Button size="small" onClick={cuts.cancel}>
            {strings.common.cancel}
          </Button>
        </div>
      )}
      {to.share !== undefined && (
        <div className="rl-stack" role="status">
          <span>{t.writing(Math.floor(to.share * 100))}</span>
          <ProgressBar value={to.share} aria-label={t.toSheet} />
          <Button size="small" onClick={to.cancel}>
            {strings.common.cancel}
          </Button>
        </div>
      )}
      {task.problem && <Notice intent="error">{task.problem}</Notice>}
      {done && <Notice intent="success">{done}</Notice>}
      <p className="rl-hint">{!prints ? t.onlyWorkbookHint : workbookFirst ? t.workbookHint : t.printHint}</p>
    </Section>
  );
}
