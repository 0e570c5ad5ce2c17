import { isTable } from "../../taskpane/workbook/design/newSheets";
import { EXTRAS, TABS } from "../../taskpane/workbook/items";
import { setUpSheets } from "../support/setUpSheets";

test("result formulas name no table with an underscore, which the local page's engine does not find (Job_costs was one)", () => {
  const formulas = setUpSheets(TABS.filter((item) => !isTable(item))).map(({ cells }) => String(cells[0]![0]));
  expect(formulas.length).toBeGreaterThan(15);
  expect(formulas.flatMap((formula) => formula.match(/\w*_\w*\[/g) ?? [])).toEqual([]);
});

test("a sheet that every workbook has reads no table that only some have (Takeoff once named Allowances, an extra)", () => {
  const usual = TABS.filter((item) => !EXTRAS.includes(item));
  const tables = TABS.filter((item) => isTable(item) && EXTRAS.includes(item));
  const formulas = setUpSheets(usual.filter((item) => !isTable(item))).map(({ cells }) => String(cells[0]![0]));
  expect(tables.length).toBeGreaterThan(4);
  expect(formulas.flatMap((formula) => tables.filter((table) => formula.includes(`${table}[`)))).toEqual([]);
});
