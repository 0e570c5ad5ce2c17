import type { IWorkbookData } from "@univerjs/core";
import { mend } from "../../../workbench/page/keep/mend";

/** Data as it may lie in a store: of any shape. */
// eslint-disable-next-line @typescript-eslint/no-explicit-any
type Any = any;

const sound = {
  id: "w",
  name: "Job",
  sheetOrder: ["a"],
  sheets: { a: { id: "a", name: "Runs", cellData: { 0: { 0: { v: "Run" }, 1: { f: "=1+1" }, 2: null } } } },
  resources: [{ name: "TABLES", data: '{"a":[]}' }],
} as unknown as IWorkbookData;

const broken = (change: (data: Any) => void): IWorkbookData => {
  const data = structuredClone(sound);
  change(data);
  return data;
};

test("a sound workbook stays as it is", () => {
  expect(mend(sound)).toEqual({ data: sound, faults: [] });
});

test.each([
  ["cells that are a text", (d: Any) => (d.sheets.a.cellData = "x"), ["every cell of Runs"], {}],
  ["a row that is a number", (d: Any) => (d.sheets.a.cellData[4] = 7), ["1 cell of Runs"], sound.sheets.a!.cellData],
  [
    "cells and formulas of no kind",
    (d: Any) => Object.assign(d.sheets.a.cellData[0], { 4: 5, 5: { v: {} }, 6: { f: 12 } }),
    ["3 cells of Runs"],
    sound.sheets.a!.cellData,
  ],
  [
    "lists cut off in the middle",
    (d: Any) => (d.resources[0].data = '{"a":['),
    ["tables or lists to choose from"],
    sound.sheets.a!.cellData,
  ],
])("%s are left out and said", (_, change, faults, cells) => {
  const mended = mend(broken(change as (data: Any) => void));
  expect(mended.faults).toEqual(faults);
  expect(mended.data.sheets.a!.cellData).toEqual(cells);
});

test("a sheet without a name gets one", () => {
  const { data, faults } = mend(broken((d) => Object.assign(d.sheets.a, { name: 5 })));
  expect(data.sheets.a!.name).toBe("Sheet 1");
  expect(faults).toEqual(["the name of Sheet 1"]);
});
