import { columnLetters } from "../../../taskpane/workbook/address";
import { FORMATS, heading } from "../../../taskpane/workbook/design/look";
import { PLAIN_FUNCTIONS, type PlainFunction } from "./plainFunctions";
import type { ContentCell, SheetContent } from "../content/sheetContent";

const headers = ["Function", "Inputs", "1", "2", "3", "Result", "Unit"];
const firstInput = 2;

/**
 * A sheet of bends worked out by built-in functions alone: every Excel, and other spreadsheet programs, can change its
 * inputs and get what the add-in would say.
 */
export function plainSheet(): SheetContent {
  const range = { startRow: 0, endRow: PLAIN_FUNCTIONS.length, startColumn: 0, endColumn: headers.length - 1 };
  return {
    name: "Bends",
    cells: [
      headers.map((value) => ({ value, look: heading("input") })),
      ...PLAIN_FUNCTIONS.map((plain, index) => row(plain, index + 2)),
    ],
    columns: [200, 330, 70, 70, 70, 110, 140].map((width, column) => ({
      width,
      look: headers[column] === "Result" ? { format: FORMATS.number } : { wrap: true },
    })),
    frozenRows: 1,
    frozenColumns: 1,
    tabColor: "1F4E5F",
    tables: [{ name: "Bends", range, headers }],
    choices: [],
  };
}

function row(plain: PlainFunction, number: number): (ContentCell | null)[] {
  const { name, inputs, unit } = plain;
  const words = inputs.map((input, index) => `${index + 1} ${input.name} [${input.unit}]`).join(", ");
  const places = inputs.map((_, index) => `${columnLetters(firstInput + index)}${number}`);
  return [
    { value: name },
    { value: words },
    ...[0, 1, 2].map((index) => (inputs[index] ? { value: inputs[index].example } : null)),
    { value: null, formula: `=${guarded(plain, places)}` },
    unit ? { value: unit } : null,
  ];
}

/** The formula with cells, or other names, in place of its inputs; says what is wrong instead of a wrong number. */
export function guarded(plain: PlainFunction, places: readonly string[]): string {
  const put = (text: string): string =>
    plain.inputs.reduce(
      (formula, { name }, index) => formula.replace(new RegExp(`\\b${name}\\b`, "g"), places[index]!),
      text,
    );
  const given = `COUNT(${places.join(",")})=${places.length}`;
  return `IF(${given},IF(${put(plain.holds)},${put(plain.expression)},"${plain.otherwise}"),"every input must be a number")`;
}

/** The same as functions that a workbook brings with it, for Excel versions that know LAMBDA. */
export function plainNames(): { name: string; formula: string }[] {
  return PLAIN_FUNCTIONS.map((plain) => {
    const names = plain.inputs.map(({ name }) => name);
    return { name: plain.name, formula: `=LAMBDA(${names.join(",")},${guarded(plain, names)})` };
  });
}

/** A LAMBDA as files spell it: parameters carry a mark. */
export function toFileLambda(formula: string): string {
  const [, parameters = "", body = ""] = /^=LAMBDA\(((?:\w+,)+)(.*)\)$/.exec(formula) ?? [];
  const names = parameters.split(",").filter((name) => name !== "");
  const marked = names.reduce(
    // Not inside the words in quotes.
    (text, name) =>
      text.replace(new RegExp(`"[^"]*"|\\b${name}\\b`, "g"), (found) => (found === name ? `_xlpm.${name}` : found)),
    body,
  );
  return `_xlfn.LAMBDA(${names.map((name) => `_xlpm.${name},`).join("")}${marked})`;
}
