import { useRef, useState } from "react";
import { stickerCount } from "../../src/drawing/ticket/stickerSheet";
import type { Ticket } from "../../src/shop/ticket/ticket";
import { STICKER_LABELS } from "../../src/shop/ticket/ticketLabels";
import { ticketTitle } from "../../src/shop/ticket/ticketTitle";
import { useUnits } from "../hooks/useUnits";
import { useWorkbook } from "../hooks/useWorkbook";
import type { CutResult } from "../totals/cuts/cutWork";
import { labelsDocument, MOST_LABELS } from "./paper/labelsDocument";
import { printDocument } from "./paper/printDocument";
import { printHtml, saveHtml } from "./paper/printHtml";
import { labelSheets, ticketSheets } from "./sheet/ticketSheet";
import { ticketStrings as t } from "./ticketStrings";

/** What is put on paper. */
export type Paper = "one" | "together" | "stickers";

/** More stickers than this in a sheet, each with its picture, are too much for it. */
const MOST_IN_SHEET = 500;
const WHEN = { dateStyle: "medium", timeStyle: "short" } as const;

export interface ToPaper {
  readonly tickets: readonly Ticket[];
  /** What the runs were last issued as; empty where they never were. */
  readonly issue: string;
  /** Straight pieces without a ticket: they stand on the cutting sheet. */
  readonly straight: number;
  readonly paper: Paper;
  /** The cutting plan, where it is wanted: undefined when it was canceled. */
  plan: (() => Promise<CutResult | undefined>) | undefined;
}

/** The ways onto paper: each says in words what it did, or nothing. */
export function usePaper({ tickets, issue, straight, paper, plan }: ToPaper) {
  const workbook = useWorkbook();
  const { style } = useUnits();
  /** How much is in the workbook; undefined while nothing is being written. */
  const [share, setShare] = useState<number>();
  const stopped = useRef(false);

  const withCuts = async <T>(make: (cuts: { cuts?: CutResult }) => T | Promise<T>): Promise<T | undefined> => {
    if (!plan) return make({});
    const cuts = await plan();
    return cuts && make({ cuts });
  };
  const page = (): Promise<string | undefined> => {
    if (paper === "stickers") {
      refuseTooMany(tickets, MOST_LABELS, "print");
      return Promise.resolve(labelsDocument(tickets, style));
    }
    const printed = new Date().toLocaleString(undefined, WHEN);
    return withCuts((cuts) =>
      printDocument(tickets, { style, together: paper === "together", printed, issue, ...cuts }),
    );
  };
  const print = async (): Promise<string> => {
    const html = await page();
    if (html !== undefined) printHtml(html);
    return "";
  };
  const save = async (): Promise<string> => {
    const html = await page();
    if (html === undefined) return "";
    const title = ticketTitle(tickets);
    const name = t.fileName(paper === "stickers" ? `${STICKER_LABELS.name} ${title}` : title);
    saveHtml(html, name);
    return t.saved(name);
  };
  const toSheet = async (): Promise<string> => {
    const stickers = paper === "stickers";
    if (stickers) refuseTooMany(tickets, MOST_IN_SHEET, "sheet");
    const look = { style, pictures: await workbook.takesPictures() };
    const contents = await workbook.readContents();
    const made = stickers
      ? labelSheets(tickets, look, contents)
      : await withCuts((cuts) => ticketSheets(tickets, { ...look, issue, straight, ...cuts }, contents));
    if (!made) return "";
    stopped.current = false;
    setShare(0);
    try {
      const isMade = await workbook.addPrintSheets(made, { onShare: setShare, isCanceled: () => stopped.current });
      if (!isMade) return t.canceled;
    } finally {
      setShare(undefined);
    }
    const names = made.map(({ sheet }) => sheet);
    return t.written(names, stickers ? "stickers" : "tickets", look.pictures);
  };
  const cancel = () => void (stopped.current = true);
  return { print, save, toSheet, share, cancel };
}

function refuseTooMany(tickets: readonly Ticket[], most: number, where: "print" | "sheet"): void {
  const count = stickerCount(tickets);
  if (count > most) throw new Error(t.tooManyLabels(count, most, where));
}
