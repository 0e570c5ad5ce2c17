import type { Cell } from "../workbook/items";

const KINDS = ["EMT", "IMC", "RMC"];
const SIZES = ["1/2", "3/4", "1"];

/** Made-up runs with a header row, no two routes alike; every third has an offset. */
export function manyRuns(count: number): Cell[][] {
  const runs = Array.from({ length: count }, (_, at): Cell[] => {
    const offset = at % 3 === 0 ? `, offset ${3 + (at % 5)} up at 30, ahead 48` : "";
    const route = `up ${24 + (at % 40)}, east ${60 + (at % 97)}${offset}`;
    return [`R-${at + 1}`, `Area ${1 + (at % 12)}`, KINDS[at % 3]!, `'${SIZES[(at % 7) % 3]!}`, route];
  });
  return [["Run", "Area", "Raceway", "Size", "Route"], ...runs];
}
