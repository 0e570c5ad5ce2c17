import { isTable } from "../../taskpane/workbook/design/newSheets";
import { TABS } from "../../taskpane/workbook/items";
import { setUpSheets } from "../support/setUpSheets";

test("result formulas name no table with an underscore, which the local page's engine does not find (Job_costs was one)", () => {
  const formulas = setUpSheets(TABS.filter((item) => !isTable(item))).map(({ cells }) => String(cells[0]![0]));
  expect(formulas.length).toBeGreaterThan(15);
  expect(formulas.flatMap((formula) => formula.match(/\w*_\w*\[/g) ?? [])).toEqual([]);
});
