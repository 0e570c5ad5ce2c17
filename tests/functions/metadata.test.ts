import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { loadBundle } from "../../workbench/engine/functions/customFunctions";

interface Parameter {
  name: string;
  description?: string;
  optional?: boolean;
}
interface Metadata {
  functions: { id: string; name: string; description?: string; helpUrl?: string; parameters: Parameter[] }[];
}

const root = join(__dirname, "../..");
const { functions } = JSON.parse(readFileSync(join(root, "dist/functions.json"), "utf8")) as Metadata;
const implementations = loadBundle(readFileSync(join(root, "dist/functions.js"), "utf8"));

/** Ids that the sources declare: the generator skips what it does not understand without a word. */
const declared = readdirSync(join(root, "functions"), { recursive: true, encoding: "utf8" })
  .filter((file) => file.endsWith(".ts"))
  .flatMap((file) => [...readFileSync(join(root, "functions", file), "utf8").matchAll(/@customfunction\s+(\S+)/g)])
  .map((match) => match[1]!);

describe("the metadata that Excel reads", () => {
  test("has every function that the sources declare, each once", () => {
    expect(declared.length).toBeGreaterThan(40);
    expect(functions.map(({ id }) => id).sort()).toEqual([...new Set(declared)].sort());
    expect(declared.length).toBe(new Set(declared).size);
  });

  test("has the functions of the contract", () => {
    const contract = `LENGTH LENGTH.TEXT OFFSET.MULTIPLIER OFFSET.SPACING OFFSET.SHRINK OFFSET.ANGLE OFFSET.STAGGER
      OFFSET.ROLLING SADDLE.SPACING SADDLE.SHRINK STUB.DEDUCT STUB.MARK KICK.RISE BEND.ARC BEND.SETBACK BEND.GAIN BEND.DIAL
      SWEEP.MARKS SWEEP.PARALLEL DATA FILL FILL.SIZE SUPPORTS EXPANSION PULLBOX RUN.LENGTH RUN.BENDS RUN.DEGREES RUN.CHECK
      RUN.POINTS RUN.MARKS JOB.SCHEDULE JOB.TAKEOFF JOB.CUTS JOB.BENDS JOB.CHECKS CUT.PLAN SHOE.CALIBRATE`.split(/\s+/);
    const ids = functions.map(({ id }) => id);
    expect(contract.filter((id) => !ids.includes(id))).toEqual([]);
  });

  test("no function is volatile: the same inputs give the same result", () => {
    const { functions: all } = JSON.parse(readFileSync(join(root, "dist/functions.json"), "utf8")) as {
      functions: { id: string; options?: { volatile?: boolean } }[];
    };
    expect(all.filter(({ options }) => options?.volatile).map(({ id }) => id)).toEqual([]);
    expect(all.some(({ options }) => options !== undefined)).toBe(true);
  });

  test("is what the bundle associates", () => {
    expect([...implementations.keys()].sort()).toEqual(functions.map(({ id }) => id).sort());
  });

  test("ids are three characters or more, letters, digits and dots, and the name shown is the id", () => {
    expect(functions.filter(({ id, name }) => !/^[A-Z][A-Z0-9.]{2,}$/.test(id) || name !== id)).toEqual([]);
  });

  test("no two ids are the same once a saved workbook turns dots into underscores", () => {
    expect(new Set(functions.map(({ id }) => id.replace(/\./g, "_"))).size).toBe(functions.length);
  });

  test("every function and every argument is described, and has a help page of its own", () => {
    for (const { id, description, helpUrl, parameters } of functions) {
      expect({ id, described: (description ?? "").length > 20 }).toEqual({ id, described: true });
      expect(helpUrl).toBe(`https://raceway-ledger.example/help/${id.toLowerCase()}.html`);
      for (const parameter of parameters) {
        expect({ id, ...parameter, described: (parameter.description ?? "").length > 5 }).toMatchObject({
          described: true,
        });
      }
    }
  });

  test("optional arguments come last, so that the ones before can be named by their place", () => {
    const wrong = functions.filter(({ parameters }) => {
      const optional = parameters.map((parameter) => parameter.optional === true);
      return optional.some((value, place) => value && optional.slice(place).includes(false));
    });
    expect(wrong.map(({ id }) => id)).toEqual([]);
  });

  test("the bundle needs nothing but CustomFunctions, and asks Office for its sets only where there is one", () => {
    const bundle = readFileSync(join(root, "dist/functions.js"), "utf8");
    const asked = bundle.match(/\bOffice\b[^;]*/g) ?? [];
    expect(asked.length).toBeLessThanOrEqual(2);
    expect(bundle).toMatch(/typeof Office\b/);
    const source = bundle.replace(/\bOffice\.context\?\.requirements|\bOffice\.context\)/, "");
    expect(source).not.toMatch(/\b(document|window|Office|Excel|require|process|fetch|importScripts)\b\s*[.([]/);
  });
});
