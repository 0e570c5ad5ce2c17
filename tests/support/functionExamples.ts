/** Every function of the metadata, the arguments of its example, and how Excel calls it. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { demoBid } from "../../workbench/demo/ferryBid";
import { demoBench, demoLabor, demoMade, demoPrices, demoStock } from "../../workbench/demo/ferryTables";
import { demoRuns, issuedRuns } from "../../workbench/demo/ferryTerminal";
import { setUpSheets } from "./setUpSheets";
import { loadBundle } from "../../workbench/engine/functions/customFunctions";

export type Cells = readonly (readonly unknown[])[];

const dist = join(__dirname, "../../dist");
const bundle = loadBundle(readFileSync(join(dist, "functions.js"), "utf8"));
export const { functions } = JSON.parse(readFileSync(join(dist, "functions.json"), "utf8")) as {
  functions: { id: string; description: string }[];
};

export const shoes = setUpSheets(["Shoes"])[0]!.cells;
const RANGES: Readonly<Record<string, Cells>> = {
  ...{ Runs: demoRuns, Issued: issuedRuns, Shoes: shoes, Stock: demoStock, Prices: demoPrices, Labor: demoLabor },
  ...{ Bid: demoBid, Bench: demoBench, Made: demoMade, "A2:A9": [[40], ["3' 4\""], [28.5]], "B2:B9": [[2], [1], [3]] },
};

/** The arguments of the example in a function's description, with the demo's tables for the ranges it names. */
export function exampleArguments(description: string): unknown[] {
  const text = /Example: =CONDUIT\.[\w.]+\((.*)\) \/\/=>/.exec(description)?.[1] ?? "";
  const json = text
    .replace(/"((?:[^"]|"")*)"/g, (_, inner: string) => JSON.stringify(inner.replace(/""/g, '"')))
    .replace(/\{([^}]*)\}/g, (_, inner: string) => `[[${inner.replace(/;/g, "],[")}]]`)
    .replace(/(\w+)\[#All\]|\b([AB]2:[AB]9)/g, (_, table?: string, range?: string) => `{"range":"${table ?? range}"}`);
  return (JSON.parse(`[${json}]`) as unknown[]).map((argument) =>
    typeof argument === "object" && argument !== null && "range" in argument
      ? RANGES[argument.range as string]
      : argument,
  );
}

export const call = (id: string, ...args: unknown[]): unknown => bundle.get(id)!(...args);
