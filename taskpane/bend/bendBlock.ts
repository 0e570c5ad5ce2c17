import { SCHEDULE_HEADERS, type ScheduleHeader } from "../../src/shop/schedule/schedule";
import { strings } from "../strings";
import { cellName } from "../workbook/address";
import type { Cell } from "../workbook/items";
import type { Block, Place } from "../excel";
import type { BendChoice, Values } from "./kinds";
import { routeSteps } from "./readFields";

export interface BendBlockInput {
  kind: BendChoice;
  values: Values;
  raceway: string;
  size: string;
  /** The shoe's radius: a number [in], or a formula that points at the Shoes table. */
  radius: Cell;
  /** Bends the schedule of this kind has: so many rows of marks. */
  bends: number;
  /** Name of the Shoes table; undefined: the built-in shoes. */
  shoesTable: string | undefined;
}

const t = strings.bend.block;

/** Columns of the marks: their header, the column of RUN.MARKS behind each, and their number format. */
const MARK_COLUMNS: readonly { header: string; from: ScheduleHeader; format: string }[] = [
  { header: t.bend, from: "Bend", format: "General" },
  { header: t.mark, from: "Mark", format: "0.000" },
  { header: t.lineUp, from: "Line up", format: "General" },
  { header: t.hook, from: "Hook", format: "General" },
  { header: t.dial, from: "Dial", format: "0.0" },
  { header: t.turn, from: "Turn", format: "General" },
];
const WIDTH = 1 + MARK_COLUMNS.length;

/** Labelled inputs and live formulas for one bend, for a place in a sheet: change an input and the marks follow. */
export function bendBlock(place: Place, input: BendBlockInput): Block {
  const { kind, values } = input;
  const lines: { cells: Cell[]; formats?: string[]; bold?: boolean }[] = [];
  const refs: Record<string, string> = {};
  const line = (label: string, value: Cell, { format = "General", name = "" } = {}) => {
    if (name) refs[name] = cellName(place.row + lines.length, place.column + 1);
    lines.push({ cells: [label, value], formats: ["General", format] });
  };

  lines.push({ cells: [kind.title], bold: true });
  line(t.raceway, input.raceway, { name: "raceway" });
  line(t.size, input.size, { format: "@", name: "size" });
  for (const field of kind.fields) {
    const label = field.kind === "length" ? t.inches(field.label) : field.label;
    line(label, values[field.key] ?? 0, { name: field.key, format: field.kind === "length" ? "0.0###" : "General" });
  }
  if (!refs.radius) line(t.radius, input.radius, { name: "radius", format: "0.0###" });
  line(t.route, routeFormula(kind, refs), { name: "route" });
  const shoes = input.shoesTable ? `,${input.shoesTable}[#All]` : "";
  const marks = `CONDUIT.RUN.MARKS(${refs.route},${refs.raceway},${refs.size}${shoes})`;
  const markCell = (row: number, column: ScheduleHeader) =>
    `=INDEX(${marks},${row + 1},${SCHEDULE_HEADERS.indexOf(column) + 1})`;
  line(t.cutLength, markCell(1, "Cut length"), { format: "0.000" });
  for (const { label, formula } of kind.results) {
    line(
      label,
      formula.replace(/\{(\w+)\}/g, (_, name: string) => refs[name] ?? name),
      { format: "0.000" },
    );
  }
  lines.push({ cells: [t.step, ...MARK_COLUMNS.map(({ header }) => header)], bold: true });
  for (let step = 1; step <= input.bends; step++) {
    lines.push({
      cells: [step, ...MARK_COLUMNS.map(({ from }) => markCell(step, from))],
      formats: ["General", ...MARK_COLUMNS.map(({ format }) => format)],
    });
  }
  return {
    cells: lines.map(({ cells }) => filled(cells, "")),
    formats: lines.map(({ formats = [] }) => filled(formats, "General")),
    bold: lines.flatMap(({ bold }, index) => (bold ? [index] : [])),
  };
}

/** Rows and columns a block takes: to look before writing. */
export const blockSize = (input: BendBlockInput): { rows: number; columns: number } => ({
  rows: bendBlock({ sheet: "", row: 0, column: 0 }, input).cells.length,
  columns: WIDTH,
});

/** The route as a formula that joins the steps' words with the input cells. */
function routeFormula(kind: BendChoice, refs: Readonly<Record<string, string>>): string {
  const marked = Object.fromEntries(kind.fields.map(({ key }) => [key, `"&${refs[key]}&"`]));
  return `="${routeSteps(kind, marked).join(", ")}"`.replace(/&""$/, "");
}

const filled = <T>(cells: readonly T[], blank: T): T[] =>
  Array.from({ length: WIDTH }, (_, index) => cells[index] ?? blank);
