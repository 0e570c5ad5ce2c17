import {
  type CellValue,
  CellError,
  type FunctionMetadata,
  type FunctionSet,
  type Implementation,
  type ParameterMetadata,
} from "../../workbench/engine";
import { type HeadlessBook, openHeadless } from "../../workbench/engine/headless";

const any: ParameterMetadata = { name: "value", type: "any" };
const optional: ParameterMetadata = { name: "more", type: "any", optional: true };
const range: ParameterMetadata = { name: "rows", type: "any", dimensionality: "matrix" };

const bodies: [FunctionMetadata, Implementation][] = [
  [entry("SEEN", [any, optional, optional]), (...values) => JSON.stringify(values)],
  [entry("SEEN.ROWS", [range]), (rows) => JSON.stringify(rows, (_, v) => (v instanceof CellError ? v.code : v))],
  [entry("SEEN.LIST", [{ ...any, repeating: true }]), (values) => JSON.stringify(values)],
  [entry("THIRD", []), () => 1 / 3],
  [entry("COUNTDOWN", [any]), (n) => Array.from({ length: Number(n) }, (_, i) => [Number(n) - i, `row ${i + 1}`])],
  [
    entry("REFUSE", [any]),
    (value) => {
      throw new CellError("#VALUE!", `value must not be ${String(value)}.`);
    },
  ],
  [entry("HALF.BAD", []), () => [["good", new CellError("#N/A", "no such row.")]]],
  [
    entry("CRASH", []),
    () => {
      throw new TypeError("a fault");
    },
  ],
  [entry("LATE", []), () => Promise.reject(new Error("late"))],
  [entry("NOTHING", []), () => [[null, ""]]],
  [entry("NAN", []), () => NaN],
  [entry("FRACTION", []), () => [["3/8", "5%"]]],
];

function entry(id: string, parameters: ParameterMetadata[]): FunctionMetadata {
  return { id, name: id, description: `Does ${id}.`, parameters };
}

/** Small functions that show what the engine hands over and what it does with answers. */
export const probeFunctions: FunctionSet = {
  namespace: "PROBE",
  metadata: { functions: bodies.map(([metadata]) => metadata) },
  implementations: new Map(bodies.map(([metadata, body]) => [metadata.id, body])),
};

/** Opens a one-sheet workbook with the given cells filled in, and waits for its results. */
export async function openProbe(cells: Record<string, CellValue>): Promise<HeadlessBook> {
  const headless = openHeadless(probeFunctions, {
    id: "probe",
    sheetOrder: ["one", "two"],
    sheets: { one: { id: "one", name: "Sheet1" }, two: { id: "two", name: "Second sheet" } },
  });
  for (const [address, value] of Object.entries(cells)) headless.book.range(address).setValues([[value]]);
  await headless.book.settled();
  return headless;
}
