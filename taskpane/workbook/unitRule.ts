import { LENGTHS_RULE, lengthUnitOf } from "../../src/rules/lengthsRule";
import { readRules } from "../../src/rules/rules";
import type { LengthStyle } from "../../src/units/formatLength";
import type { TableCells } from "../excel";
import type { WorkbookApi } from "../hooks/useWorkbook";
import { attempt } from "../components/attempt";
import { appendRows, rowSeen } from "./appendRows";
import { columnPlaces } from "./columns";
import type { NamedTables } from "./design/formulas";

/** What the Rules table says of it; undefined where it leaves lengths as they are written, or says nothing. */
export function unitOfRules(rules: TableCells | undefined): LengthStyle | undefined {
  const unit = attempt(() => lengthUnitOf(readRules(rules?.cells ?? null))).value;
  return unit === undefined || unit === "as written" ? undefined : unit;
}

/** Writes the rule into the row it has in the Rules table, or into a new one. */
export async function writeUnitRule(
  workbook: WorkbookApi,
  rules: TableCells,
  tables: NamedTables,
  style: LengthStyle,
): Promise<void> {
  const places = columnPlaces(rules.cells[0] ?? [], [{ name: "Rule" }, { name: "Value" }]);
  const [name, value] = [places.get("Rule"), places.get("Value")];
  if (name === undefined || value === undefined) return;
  const key = (cell: unknown) => String(cell).trim().toLowerCase();
  const line = rules.cells.findIndex((row, at) => at > 0 && key(row[name]) === key(LENGTHS_RULE));
  if (line < 0) {
    await appendRows(workbook, "Rules", rules, [{ Rule: LENGTHS_RULE, Value: style }], tables);
    return;
  }
  const place = { sheet: rules.sheet, row: rules.row + line, column: rules.column + value };
  await workbook.writeCells(place, [[style]], [...rowSeen(rules, 0), ...rowSeen(rules, line)]);
}
