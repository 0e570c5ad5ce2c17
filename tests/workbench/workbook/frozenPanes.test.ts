/** ECMA-376 Part 1, 18.3.1.66: a pane element says where a sheet's window is split; a sheet without a split has none. */
import { writeXlsx } from "../../../workbench/workbook/file/writeXlsx";
import { partOf } from "./otherReader";

test.each([
  [0, 0, false],
  [1, 0, true],
  [0, 1, true],
])("%i frozen rows and %i columns: a pane is written: %s", async (frozenRows, frozenColumns, written) => {
  const sheet = {
    name: "A",
    cells: [[{ value: "x" }]],
    columns: [],
    frozenRows,
    frozenColumns,
    tables: [],
    choices: [],
  };
  const bytes = await writeXlsx([sheet], { title: "A book", namespace: "CONDUIT" });
  expect(partOf(bytes, "xl/worksheets/sheet1.xml").includes("<pane ")).toBe(written);
});
