/** A set-up that Excel breaks off at every stage, and nothing of it could be taken away: known later, and gone on with. */
import * as excel from "../../taskpane/excel";
import { stillToWrite } from "../../taskpane/excel/sheets/goOn";
import { strings } from "../../taskpane/strings";
import { setUpSheets } from "../support/setUpSheets";
import { openLocalExcel, type LocalExcel } from "./support/localExcel";
import { stateOf } from "./support/state";

jest.setTimeout(120_000);

let local: LocalExcel;
beforeEach(async () => (local = await openLocalExcel()));
afterEach(() => local.close());

const SHEETS = setUpSheets(["Shoes", "Prices", "Rules", "Rules in force", "Traced"]);
const SETTINGS = excel.namesSetting({ ...excel.defaultNames(), Runs: "Feeders" });
const setUp = (begun: readonly string[] = []) => excel.setUp(SHEETS, { settings: SETTINGS, begun });
const tabs = () => local.book.sheets().map(({ name }) => name);

/** What stands in the workbook, tables by what they cover: their ids are new each time. */
function standing() {
  const { sheets, kept } = stateOf(local.book);
  const tables = Object.entries(kept).flatMap(([key, data]) =>
    /TABLE/.test(key) ? [...data.matchAll(/"name":"([^"]*)".*?"range":(\{[^}]*\})/g)].map(([, ...told]) => told) : [],
  );
  const settings = Object.entries(kept).flatMap(([key, data]) => (/SETTINGS/.test(key) ? [JSON.parse(data)] : []));
  return { sheets, tables: tables.map(String).sort(), settings, tabs: tabs() };
}

/** Excel stays broken from one step on: what was made cannot be taken away either. */
function breakFrom(at: number): void {
  let step = 0;
  local.fail = () => (step++ >= at ? "AccessDenied" : undefined);
}

const mend = () => void (local.fail = () => undefined);

test("wherever it broke, going on makes of it what an unbroken set-up makes", async () => {
  let steps = 0;
  local.fail = () => void (steps += 1) as undefined;
  const untouched = standing();
  await setUp();
  const whole = standing();
  expect(whole.tables).toHaveLength(3);
  expect(whole.settings).toEqual([
    expect.objectContaining({ "raceway-ledger.begun": { sheets: [], settings: {} }, ...SETTINGS }),
  ]);
  local.close();
  let known = 0;
  const stride = Math.ceil(steps / 16);
  for (let at = 1; at < steps; at += stride) {
    local = await openLocalExcel();
    breakFrom(at);
    const error = await setUp().then(
      () => undefined,
      (thrown: Error) => thrown,
    );
    mend();
    if (error) {
      expect(error.message).toMatch(/protected.*(Half of it may stand.* it goes on|Nothing was changed\.$)/);
      if (error.message.endsWith(strings.excel.untouched)) expect(standing()).toEqual(untouched);
      const begun = await excel.readBegun();
      const there = begun.sheets.filter((sheet) => tabs().includes(sheet));
      known += there.length > 0 ? 1 : 0;
      // Whatever stands of it is known, and with it the names that it was going to store.
      if (there.length > 0) expect(excel.namesIn(begun.settings).Runs).toBe("Feeders");
      else expect(tabs()).toEqual(["Sheet1"]);
      await setUp(there);
    }
    expect([at, standing()]).toEqual([at, whole]);
    local.close();
  }
  expect(known).toBeGreaterThan(8);
  local = await openLocalExcel();
});

test("what was begun and is taken away again is begun no more", async () => {
  let failed = false;
  local.fail = ({ Name }) => (Name === "Formulas" && !failed ? ((failed = true), "AccessDenied") : undefined);
  await expect(setUp()).rejects.toThrow(/What was made of it is taken away again/);
  expect(tabs()).toEqual(["Sheet1"]);
  expect(await excel.readBegun()).toEqual({ sheets: [], settings: {} });
});

test("what a person wrote into a half-made sheet since then is not written over", async () => {
  breakFrom(300);
  await expect(setUp()).rejects.toThrow(/Half of it may stand/);
  mend();
  const there = tabs().filter((name) => name !== "Sheet1");
  expect(there).toContain("Shoes");
  const shoes = local.book.sheet("Shoes");
  shoes.cells(1, 0).setValues([["PVC 40"]]);
  shoes.cells(3, 2).setValues([["mine"]]);
  await setUp(there);
  const { cells } = SHEETS.find(({ sheet }) => sheet === "Shoes")!;
  const rows = local.book.sheet("Shoes").used()!.values;
  expect(rows[1]![0]).toBe("PVC 40");
  expect(rows[3]![2]).toBe("mine");
  // The rows nobody wrote in have what a new Shoes has.
  expect(rows[2]!.slice(0, 2)).toEqual(cells[2]!.slice(0, 2));
});

test("going on that fails once more takes away nothing that it found, and says so", async () => {
  breakFrom(300);
  await expect(setUp()).rejects.toThrow();
  mend();
  const there = tabs().filter((name) => name !== "Sheet1");
  local.fail = ({ Name }) => (Name === "TabColor" ? "AccessDenied" : undefined);
  await expect(setUp(there)).rejects.toThrow(/What is there of it stays\. Press again: it goes on from there\.$/);
  mend();
  expect(tabs()).toEqual(expect.arrayContaining(there));
  expect((await excel.readBegun()).sheets).toEqual(SHEETS.map(({ sheet }) => sheet));
});

test("an open row gets its values and formulas, a row somebody wrote in its formulas alone", () => {
  const cells = [
    ["Run", "Route", "Length"],
    ["a", 1, "=LEN(A2)"],
    ["b", 2, "=LEN(A3)"],
    ["c", 3, "=LEN(A4)"],
  ];
  const now = [
    ["Run", "", ""],
    ["", "", ""],
    ["mine", "", ""],
    ["", "", "=MINE()"],
  ];
  expect(stillToWrite(cells, now)).toEqual([
    [null, "Route", "Length"],
    ["a", 1, "=LEN(A2)"],
    [null, null, "=LEN(A3)"],
    ["c", 3, null],
  ]);
});
