import { Button, Checkbox } from "@fluentui/react-components";
import { ArrowDownloadRegular, DocumentTableRegular, PrintRegular, TagRegular } from "@fluentui/react-icons";
import { useEffect, useRef, useState } from "react";
import type { Ticket } from "../../src/shop/ticket/ticket";
import { ticketTitle } from "../../src/shop/ticket/ticketTitle";
import { Choice } from "../components/Choice";
import { Notice } from "../components/Notice";
import { Section } from "../components/Section";
import { SheetButton } from "../components/SheetButton";
import { useTask } from "../components/useTask";
import type { TableCells } from "../excel";
import { useKept } from "../hooks/useKept";
import { useLedger } from "../hooks/useLedger";
import { useUnits } from "../hooks/useUnits";
import { useWorkbook } from "../hooks/useWorkbook";
import { strings } from "../strings";
import type { CutResult } from "../totals/cuts/cutWork";
import { cutJob } from "../totals/cuts/cutJob";
import { planInWorker, type Planning } from "../totals/cuts/planInWorker";
import { freeSheetName } from "../workbook/plan";
import { labelCount, labelsDocument, MOST_LABELS } from "./labelsDocument";
import { printDocument } from "./printDocument";
import { printHtml, saveHtml } from "./printHtml";
import { sheetName, ticketSheet } from "./ticketSheet";
import { ticketStrings as t } from "./ticketStrings";

type Pages = "one" | "together";
const WHEN = { dateStyle: "medium", timeStyle: "short" } as const;

/** Prints the tickets, saves them as a page, or puts them in the workbook. */
export function TicketActions({
  tickets,
  issue,
  straight,
  made,
}: {
  tickets: readonly Ticket[];
  /** What the runs were last issued as; empty where they never were. */
  issue: string;
  /** Straight pieces without a ticket: they stand on the cutting sheet. */
  straight: number;
  /** The Made table, where only what is not yet made is wanted: the cutting sheet leaves the rest out too. */
  made: TableCells | undefined;
}) {
  const workbook = useWorkbook();
  const { style } = useUnits();
  const task = useTask();
  const [pages, setPages] = useKept<Pages>("tickets.pages", "one");
  const [cutsAsked, setWithCuts] = useKept<boolean | undefined>("tickets.cuts", undefined);
  const withCuts = cutsAsked ?? straight > 0;
  const [done, setDone] = useState("");
  const cuts = useCuts(made);

  const start = (action: () => Promise<string>) => {
    setDone("");
    void task.run(async () => setDone(await action()));
  };
  const page = async (): Promise<string | undefined> => {
    const plan = withCuts ? await cuts.plan() : undefined;
    if (withCuts && !plan) return undefined;
    return printDocument(tickets, {
      ...{ style, together: pages === "together", printed: new Date().toLocaleString(undefined, WHEN), issue },
      ...(plan ? { cuts: plan } : {}),
    });
  };
  const print = async () => {
    const html = await page();
    if (html !== undefined) printHtml(html);
    return "";
  };
  const save = async () => {
    const html = await page();
    if (html === undefined) return "";
    const name = t.fileName(ticketTitle(tickets));
    saveHtml(html, name);
    return t.saved(name);
  };
  const labels = async () => {
    const count = labelCount(tickets);
    if (count > MOST_LABELS) throw new Error(t.tooManyLabels(count, MOST_LABELS));
    printHtml(labelsDocument(tickets, style));
    return Promise.resolve("");
  };
  const toSheet = async () => {
    const sheet = freeSheetName(sheetName(tickets), await workbook.readContents());
    await workbook.addPrintSheet(ticketSheet(tickets, style, sheet));
    return t.written(sheet);
  };

  return (
    <Section title={t.paper}>
      <Choice<Pages>
        label={t.pages}
        value={pages}
        options={[
          { value: "one", text: t.onePage },
          { value: "together", text: t.together },
        ]}
        onChange={setPages}
      />
      <Checkbox label={t.cutSheet} checked={withCuts} onChange={(_, data) => setWithCuts(data.checked === true)} />
      <div className="rl-row">
        <SheetButton
          appearance="primary"
          icon={<PrintRegular />}
          disabledFocusable={task.busy}
          onClick={() => start(print)}
        >
          {t.print}
        </SheetButton>
        <SheetButton icon={<ArrowDownloadRegular />} disabledFocusable={task.busy} onClick={() => start(save)}>
          {t.save}
        </SheetButton>
        <SheetButton icon={<DocumentTableRegular />} disabledFocusable={task.busy} onClick={() => start(toSheet)}>
          {t.toSheet}
        </SheetButton>
        <SheetButton icon={<TagRegular />} disabledFocusable={task.busy} onClick={() => start(labels)}>
          {t.labels}
        </SheetButton>
      </div>
      {cuts.title !== undefined && (
        <div className="rl-row" role="status">
          <span>{t.planning(cuts.title)}</span>
          <Button size="small" onClick={cuts.cancel}>
            {strings.common.cancel}
          </Button>
        </div>
      )}
      {task.problem && <Notice intent="error">{task.problem}</Notice>}
      {done && <Notice intent="success">{done}</Notice>}
      <p className="rl-hint">{t.printHint}</p>
    </Section>
  );
}

/** The cutting plan for the sheet behind the tickets; undefined from `plan` when the person cancels it. */
function useCuts(made: TableCells | undefined) {
  const { tables } = useLedger();
  const planning = useRef<Planning | undefined>(undefined);
  const giveUp = useRef<() => void>(() => undefined);
  /** What is being planned; undefined while nothing is. */
  const [title, setTitle] = useState<string>();
  useEffect(() => () => planning.current?.cancel(), []);

  const plan = async (): Promise<CutResult | undefined> => {
    const whole = cutJob(tables);
    if (!whole) return undefined;
    const given = made ? { ...whole, made: made.cells } : whole;
    setTitle("");
    const canceled = new Promise<undefined>((resolve) => (giveUp.current = () => resolve(undefined)));
    try {
      planning.current = planInWorker(given, (soFar) => setTitle(soFar.title));
      return await Promise.race([planning.current.result, canceled]);
    } finally {
      setTitle(undefined);
    }
  };
  const cancel = () => {
    planning.current?.cancel();
    giveUp.current();
  };
  return { title, plan, cancel };
}
