import type { FunctionSet, Implementation, ParameterMetadata } from "../../../workbench/engine";

const any: ParameterMetadata = { name: "value", type: "any" };
const range: ParameterMetadata = { name: "rows", type: "any", dimensionality: "matrix" };

/** Works for a while, so that there is a middle of the calculation to make an edit in [ms]. */
function workFor(time: number): void {
  const end = performance.now() + time;
  while (performance.now() < end);
}

const bodies: Record<string, [ParameterMetadata, Implementation]> = {
  TWICE: [
    any,
    (value) => {
      workFor(2);
      return typeof value === "number" ? 2 * value : "no number";
    },
  ],
  /** As many rows as the numbers' remainders of 3 add up to, so that the table grows and shrinks. */
  SPREAD: [
    range,
    (rows) => {
      workFor(5);
      const numbers = (rows as unknown[][]).flat().filter((value): value is number => typeof value === "number");
      const made = numbers.flatMap((number) =>
        Array.from({ length: number % 3 }, (_, at) => [number, `part ${at + 1}`]),
      );
      return made.length > 0 ? made : [["none", ""]];
    },
  ],
};

/** Two slow functions: a number doubled, and a table whose height follows the numbers. */
export const slowFunctions: FunctionSet = {
  namespace: "SLOW",
  metadata: {
    functions: Object.entries(bodies).map(([id, [parameter]]) => ({ id, name: id, parameters: [parameter] })),
  },
  implementations: new Map(Object.entries(bodies).map(([id, [, body]]) => [id, body])),
};
