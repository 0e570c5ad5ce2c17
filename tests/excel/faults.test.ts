/**
 * Every action of the pane that writes, through Microsoft's Office.js over the local workbook, failed at every place
 * where Excel can fail it: words that are true, nothing of the person's lost, and a way on.
 */
import * as excel from "../../taskpane/excel";
import { strings } from "../../taskpane/strings";
import { ticketSheets } from "../../taskpane/tickets/sheet/ticketSheet";
import { buildJob } from "../../src/shop/job/job";
import { jobTickets } from "../../src/shop/ticket/jobTickets";
import { setUpSheets } from "../support/setUpSheets";
import { openLocalExcel, type LocalExcel } from "./support/localExcel";
import { stateOf, type State } from "./support/state";

jest.setTimeout(120_000);

let local: LocalExcel;
afterEach(() => local.close());

/** Sheet1 holds what the person wrote; Prices and Shoes are ours. */
async function prepare(): Promise<void> {
  local = await openLocalExcel();
  await excel.setUp(setUpSheets(["Prices", "Shoes"]));
  await excel.writeCells({ sheet: "Sheet1", row: 0, column: 0 }, [["mine", 7, "=B1*2"]], []);
  await excel.writeCells({ sheet: "Prices", row: 1, column: 0 }, [["part 1", "each", 2]], []);
  local.sizes.length = 0;
}

const PLACE = { sheet: "Prices", row: 1, column: 0 };
const BLOCK = { cells: [["a", 1]], formats: [["@", "0.00"]], bold: [0] };
const TICKETS = () =>
  ticketSheets(
    jobTickets(
      buildJob({
        runs: [
          ["Run", "Raceway", "Size", "Route"],
          ["P-1", "EMT", "1/2", "stub 10 up, east 5'"],
        ],
      }),
    ).tickets,
    { style: "feet", pictures: false, issue: "", straight: 0 },
    { sheets: [], corners: [], lost: [], gone: [], tables: [], names: [] },
  );
const table = async () => (await excel.readTables(["Prices"]))[0]!;

/** What is done before, and the action itself. */
const ACTIONS: Record<string, { first?: () => Promise<unknown>; act: (before: never) => Promise<unknown> }> = {
  "set up": { act: () => excel.setUp(setUpSheets(["Stock", "Bend counts"]), { settings: { key: "new" } }) },
  "put tickets in": {
    act: () => excel.addPrintSheets(TICKETS(), { onShare: () => undefined, isCanceled: () => false }),
  },
  "add rows": {
    act: () =>
      excel.addRows("Prices", [
        ["part 2", "each", 3],
        ["part 3", "each", 4],
      ]),
  },
  "write cells": { act: () => excel.writeCells(PLACE, [["part 9", null, 5]], [{ ...PLACE, value: "part 1" }]) },
  "put a bend in the sheet": { act: () => excel.writeBlock({ sheet: "Sheet1", row: 4, column: 0 }, BLOCK) },
  "take a bend back": {
    first: () => excel.writeBlock({ sheet: "Sheet1", row: 4, column: 0 }, BLOCK),
    act: (before) => excel.takeBack(before),
  },
  "save a shoe": {
    act: () =>
      excel.replaceCells(
        [
          { ...PLACE, cell: "x" },
          { ...PLACE, column: 2, cell: 9 },
        ],
        [],
      ),
  },
  "take a shoe back": {
    first: () => excel.replaceCells([{ ...PLACE, cell: "x" }], []),
    act: (before) => excel.putBack(before, []),
  },
  "take rows in": {
    first: async () => {
      await excel.writeCells({ sheet: "Prices", row: 2, column: 0 }, [["part 2", "each", 3]], []);
      return table();
    },
    act: (before) => excel.takeRowsIn(before, 1),
  },
  "put a row and a change into a list": {
    first: table,
    act: (prices: excel.TableCells) =>
      excel.changeRows(prices, [
        { row: 1, column: 2, cell: 8 },
        { row: prices.cells.length, column: 0, cell: "part 2" },
      ]),
  },
  "show columns": { act: () => excel.showColumns([PLACE], true) },
  "write names": { act: () => excel.writeNames({ ...excel.defaultNames(), Runs: "Feeders" }) },
  "make a sheet": { act: () => excel.addSheet("Bends") },
};

/** How Excel can fail: a request whole, or on the way at one of its steps. */
const WHOLE = ["InvalidOperationInCellEditMode", "RequestPayloadSizeLimitExceeded", "InactiveWorkbook"];
const ON_THE_WAY = ["AccessDenied", "FilteredRangeConflict", "MergedRangeConflict", "GeneralException"];

/** Places at which an action is failed; all of them, one by one, were tried once. */
const STEPS = 10;

const { excel: words } = strings;

/** What the words must be, and what they promise. */
function check(error: unknown, code: string, before: State, after: State): void {
  expect(error).toBeInstanceOf(excel.ExcelProblem);
  const { message } = error as Error;
  expect(message.startsWith(words.problems[code]!)).toBe(true);
  // Whatever does not warn has changed nothing.
  if (!message.endsWith(words.partly)) expect(after).toEqual(before);
  // What the person wrote is there, whatever became of ours.
  expect(after.sheets.Sheet1?.slice(0, 3)).toEqual(before.sheets.Sheet1?.slice(0, 3));
}

describe.each(Object.entries(ACTIONS))("%s", (_, { first, act }) => {
  const begin = async () => {
    await prepare();
    const given = (await first?.()) as never;
    local.sizes.length = 0;
    return given;
  };

  /** Fails the action at each place of several, tells what came of it, and counts how often the person was told. */
  const failing = async (places: readonly number[], fail: (at: number) => string) => {
    let told = 0;
    for (const at of places) {
      const again = await begin();
      const before = stateOf(local.book);
      const code = fail(at);
      const error = await act(again).then(
        () => undefined,
        (thrown: unknown) => thrown,
      );
      local.refuse = local.fail = () => undefined;
      // The last request of a run tidies up: Office.js does without it.
      if (error) {
        told += 1;
        check(error, code, before, stateOf(local.book));
      }
      local.close();
    }
    expect(told).toBeGreaterThan(0);
    await begin();
  };

  test.each(WHOLE)("a request refused whole: %s", async (code) => {
    const given = await begin();
    await act(given);
    const requests = local.sizes.map((_, at) => at);
    local.close();
    await failing(requests, (at) => {
      local.refuse = () => (local.sizes.length - 1 === at ? code : undefined);
      return code;
    });
  });

  test("a failure on the way, at steps of every request", async () => {
    const given = await begin();
    let steps = 0;
    local.fail = () => void (steps += 1) as undefined;
    await act(given);
    local.close();
    const stride = Math.ceil(steps / STEPS);
    const places = Array.from({ length: Math.ceil(steps / stride) }, (_, turn) => turn * stride);
    await failing(places, (at) => {
      const code = ON_THE_WAY[at % ON_THE_WAY.length]!;
      let step = 0;
      local.fail = () => (step++ === at ? code : undefined);
      return code;
    });
  });
});
