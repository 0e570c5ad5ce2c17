import * as bends from "../../functions/bend/bends";
import * as kicks from "../../functions/bend/kicks";
import * as lengths from "../../functions/bend/lengths";
import * as offsets from "../../functions/bend/offsets";
import * as saddles from "../../functions/bend/saddles";
import * as stubs from "../../functions/bend/stubs";
import * as sweeps from "../../functions/bend/sweeps";
import * as testBends from "../../functions/bend/testBends";
import { docExamples } from "../support/docExamples";

const modules: Record<string, Record<string, unknown>> = {
  "bends.ts": bends,
  "kicks.ts": kicks,
  "lengths.ts": lengths,
  "offsets.ts": offsets,
  "saddles.ts": saddles,
  "stubs.ts": stubs,
  "sweeps.ts": sweeps,
  "testBends.ts": testBends,
};

const EXAMPLES = docExamples(Object.keys(modules));

test("every exported function of single bends has an example", () => {
  const exported = Object.values(modules).flatMap((module) => Object.keys(module));
  expect(EXAMPLES.map(({ name }) => name).sort()).toEqual(exported.sort());
});

test.each(EXAMPLES)("the example of $id gives $result", ({ file, name, args, result }) => {
  const value = (modules[file]?.[name] as (...args: unknown[]) => unknown)(...args);
  if (Array.isArray(value)) expect((value[0] as string[]).join(", ")).toBe(result);
  else if (typeof value === "number") expect(Number(value.toFixed(4))).toBe(Number(result));
  else expect(value).toBe(result);
});
