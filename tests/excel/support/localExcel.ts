/**
 * Microsoft's own Office.js over the local workbook: what the pane asks goes through Microsoft's client as it would in
 * Excel on the web, and its requests are done in the spreadsheet engine.
 *
 * The script is `excel-web-16.00.js` of the npm package @microsoft/office-js, under Microsoft's own license ("Microsoft
 * Office JavaScript (Office.js) API library": use in apps that work together with Microsoft 365). It is loaded from
 * node_modules for tests, never copied or changed.
 */
import { readFileSync } from "node:fs";
import path from "node:path";
import { MessageChannel } from "node:worker_threads";
import type { Book } from "../../../workbench/engine";
import { openHeadless } from "../../../workbench/engine/headless";
import { officeFor } from "../../../workbench/office";
import { Replay } from "./replay";
import type { Action, Message } from "./wire";

const SCRIPT = "node_modules/@microsoft/office-js/dist/excel-web-16.00.js";
/** Excel on the web refuses larger requests (Microsoft, "Resource limits and performance optimization") [bytes]. */
const MOST = 5 * 1024 * 1024;
/** What we allow ourselves [bytes]. */
export const OURS = 4 * 1024 * 1024;
/** Number of `worksheets.onChanged` among Office.js's events, and the category they come under. */
const CHANGED = { messageCategory: 65536, messageType: 10, targetId: "Workbook" };
/** What the local workbook has not: how a page prints, hints, and what stands over cells. */
const LOOKS = new Set([
  ...["Worksheet.pageLayout", "Worksheet.horizontalPageBreaks", "Worksheet.charts", "Worksheet.shapes"],
  ...[
    "DataValidation.prompt",
    "RangeFont.name",
    "RangeFormat.borders",
    "RangeFormat.indentLevel",
    "Range.left",
    "Range.top",
  ],
]);

export interface LocalExcel {
  book: Book;
  replay: Replay;
  /** Sizes of the requests so far [bytes]. */
  sizes: number[];
  /** Fails a request whole, before anything is done: its code, or undefined. */
  refuse(message: Message, flags: number): string | undefined;
  /** Fails a request on the way, before an action. */
  fail(action: Action, index: number, message: Message): string | undefined;
  /** How long a request takes before it is looked at [ms]. */
  slowness: number;
  /** Takes requests without doing them: for how much is sent. */
  onlyCounts: boolean;
  close(): void;
}

interface Wire {
  ClientRequestContext: { defaultRequestUrlAndHeaders: unknown };
  _testSetRichApiMessageReadyImpl(ready: () => Promise<void>): void;
  _testTriggerRichApiMessageEvent(message: unknown): void;
}

let microsoft: Wire | undefined;

/** Opens an empty workbook and puts Microsoft's `Excel` over it. */
export async function openLocalExcel(): Promise<LocalExcel> {
  Object.assign(globalThis, { MessageChannel });
  const none = { metadata: { functions: [] }, implementations: new Map() } as unknown as Parameters<
    typeof openHeadless
  >[0];
  const headless = openHeadless(none, {
    id: "book",
    sheetOrder: ["one"],
    sheets: { one: { id: "one", name: "Sheet1" } },
  });
  const { book } = headless;
  await book.settled();
  const wire = (microsoft ??= loadMicrosoft());
  const tell = () => ({
    type: "WorksheetChanged",
    address: "A1",
    changeType: "RangeEdited",
    source: "Local",
    worksheetId: "",
  });
  const local = await localContext(book);
  const replay = new Replay(local, LOOKS, (event) => {
    if (event !== "_RegisterDataChangedEvent") return;
    local.workbook.worksheets.onChanged.add(async () =>
      wire._testTriggerRichApiMessageEvent({ entries: [{ ...CHANGED, message: JSON.stringify(tell()) }] }),
    );
  });
  const excel: LocalExcel = {
    ...{ book, replay, sizes: [], slowness: 0, onlyCounts: false, close: headless.close },
    refuse: () => undefined,
    fail: () => undefined,
  };
  const executeAsync = async (_: string, flags: number, { Body }: { Body: Message }) => {
    const size = Buffer.byteLength(JSON.stringify(Body));
    excel.sizes.push(size);
    if (excel.slowness > 0) await new Promise((resolve) => setTimeout(resolve, excel.slowness));
    const code = size > MOST ? "RequestPayloadSizeLimitExceeded" : excel.refuse(Body, flags);
    const told = { HttpStatusCode: 200, Headers: {}, ErrorCode: "", ErrorMessage: "" };
    if (code) return { ...told, HttpStatusCode: 400, ErrorCode: code, ErrorMessage: "fault of the test", Body: null };
    if (excel.onlyCounts) return { ...told, Body: { Results: [] } };
    return { ...told, Body: await replay.execute(Body, (action, index) => excel.fail(action, index, Body)) };
  };
  wire.ClientRequestContext.defaultRequestUrlAndHeaders = {
    _resolveRequestUrlAndHeaderInfo: async () => ({ url: "https://workbook.example/", headers: {} }),
    _createRequestExecutorOrNull: () => ({ executeAsync }),
  };
  return excel;
}

function loadMicrosoft(): Wire {
  // Microsoft's script, as a page loads it.
  (0, eval)(readFileSync(path.resolve(SCRIPT), "utf8"));
  const wire = (globalThis as unknown as { OfficeExtension: Wire }).OfficeExtension;
  wire._testSetRichApiMessageReadyImpl(async () => undefined);
  const succeed = (_: unknown, __: unknown, done: (result: unknown) => void) => done({ status: "succeeded" });
  const context = { document: { addHandlerAsync: succeed, removeHandlerAsync: succeed } };
  Object.assign(globalThis, { Office: { EventType: Office.EventType, context } });
  return wire;
}

/** One context for everything, so that what Office.js holds on to stays found. */
const localContext = (book: Book): Promise<Excel.RequestContext> =>
  new Promise((resolve) => {
    void officeFor(book).Excel.run(async (context) => {
      resolve(context);
      await new Promise(() => undefined);
    });
  });
