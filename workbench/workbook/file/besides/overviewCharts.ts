import type { SheetChart } from "hucre/xlsx";
import { OVERVIEW_HEADERS } from "../../../../src/overview/overview";
import { cellName } from "../../../../taskpane/workbook/address";
import type { SheetContent } from "../../content/sheetContent";

/** Where charts stand: two beside each other, right of the table. */
const [FIRST_COLUMN, ACROSS, WIDE, HIGH] = [6, 2, 7, 15] as const;
const BARS = "1F4E5F";

/** True for a sheet that holds an overview from its first cell on. */
export const isOverview = ({ cells }: SheetContent): boolean =>
  OVERVIEW_HEADERS.every((header, column) => cells[0]?.[column]?.value === header);

/** A bar chart to each part of an overview that has amounts; it reads the cells beside it, labels and amounts. */
export function overviewCharts(sheet: SheetContent): SheetChart[] {
  if (!isOverview(sheet)) return [];
  return partsOf(sheet).map(({ name, units, first, last }, place): SheetChart => {
    const cells = (column: number) =>
      `'${sheet.name.replace(/'/g, "''")}'!${absolute(first, column)}:${absolute(last, column)}`;
    const from = { row: 1 + Math.floor(place / ACROSS) * HIGH, col: FIRST_COLUMN + (place % ACROSS) * WIDE };
    return {
      ...{ type: "bar", title: `${name}, ${units.join(" and ")}`, legend: false, gapWidth: 40 },
      series: [{ name, categories: cells(1), values: cells(3), color: BARS }],
      anchor: { from, to: { row: from.row + HIGH, col: from.col + WIDE } },
      dataLabels: {
        showValue: true,
        position: "outEnd",
        numberFormat: { formatCode: isWhole(units) ? "#,##0" : "#,##0.0" },
      },
      // Bars are read from above, as the rows are.
      axes: { x: { reverse: true }, y: { hidden: true, gridlines: { major: false } } },
    };
  });
}

/** Money and pieces are told whole on a chart; feet and hours have a tenth. */
const isWhole = (units: readonly string[]): boolean => !units.includes("ft") && !units.includes("h");

const absolute = (row: number, column: number): string => cellName(row, column).replace(/([A-Z]+)(\d+)/, "$$$1$$$2");

interface PartRows {
  name: string;
  units: string[];
  first: number;
  last: number;
}

/** The rows of each part that have an amount; they follow one another. */
function partsOf({ cells }: SheetContent): PartRows[] {
  const parts: PartRows[] = [];
  cells.forEach((row, at) => {
    const [name, unit, amount] = [0, 2, 3].map((column) => row[column]?.value);
    if (typeof amount !== "number") return;
    const open = parts.at(-1);
    if (open && open.name === name) {
      open.last = at;
      open.units = [...new Set([...open.units, String(unit)])];
    } else parts.push({ name: String(name), units: [String(unit)], first: at, last: at });
  });
  return parts;
}
