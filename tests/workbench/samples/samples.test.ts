/** The sample workbooks: as they are made anew, and as they lie in docs/samples for whoever follows the README. */
import { readFileSync, statSync } from "node:fs";
import { join } from "node:path";
import { buildJob } from "../../../src/shop/job/job";
import { scheduleJob, scheduleTable } from "../../../src/shop/schedule/schedule";
import { openHeadless } from "../../../workbench/engine/headless";
import { sampleFile } from "../../../workbench/samples/command";
import { SAMPLES, sampleItems } from "../../../workbench/samples/sampleBooks";
import { openXlsx } from "../../../workbench/workbook";
import { builtFunctions } from "../workbook/demoFile";
import { readWithExcelJs, shownValues, type Shown } from "../workbook/otherReader";

jest.setTimeout(120_000);

const root = join(__dirname, "../../..");
const functions = builtFunctions();
const committed = (file: string) => readFileSync(join(root, "docs/samples", `${file}.xlsx`));

/** Rows without the empty cells and rows at their ends. */
const trimmed = (rows: readonly (readonly Shown[])[]): string[] => {
  const words = rows.map((row) =>
    row
      .map((cell) => (cell === null ? "" : String(cell)))
      .join("\t")
      .trimEnd(),
  );
  while (words.at(-1) === "") words.pop();
  return words;
};

/** What the engine works out of a file, sheet by sheet, and every error in it. */
async function workedOut(bytes: Uint8Array) {
  const { book, close } = openHeadless(functions, await openXlsx(bytes, functions));
  try {
    await book.settled();
    const used = book.sheets().map((sheet) => ({ name: sheet.name, cells: sheet.used() }));
    return {
      sheets: new Map(used.map(({ name, cells }) => [name, trimmed((cells?.values ?? []) as Shown[][])])),
      errors: used.flatMap(({ name, cells }) =>
        (cells?.errors ?? []).flatMap((row, at) =>
          row.flatMap((error, column) => (error ? [`${name} row ${at + 1} column ${column + 1}: ${error.code}`] : [])),
        ),
      ),
      formulas: used.flatMap(({ cells }) => (cells?.formulas ?? []).flat().filter(Boolean)).length,
    };
  } finally {
    close();
  }
}

const records = ([headers = [], ...rows]: Shown[][]) =>
  rows.map((row) => Object.fromEntries(headers.map((header, at) => [String(header), row[at] ?? null])));

describe.each(SAMPLES)("$file", (sample) => {
  test("made anew it has its sheets, tickets only where they are wanted, and works out without an error", async () => {
    const bytes = await sampleFile(sample, functions);
    const names = (await readWithExcelJs(bytes)).worksheets.map(({ name }) => name);
    expect(names).toEqual([...sampleItems(sample), ...(sample.tickets ? ["Tickets"] : [])]);
    const { errors, formulas } = await workedOut(bytes);
    expect(errors).toEqual([]);
    expect(formulas).toBeGreaterThan(20);
  });

  test("the file in docs/samples shows what the engine works out of it; where not: npm run samples", async () => {
    const bytes = committed(sample.file);
    const { sheets, errors } = await workedOut(bytes);
    expect(errors).toEqual([]);
    const file = await readWithExcelJs(bytes);
    expect([...sheets.keys()]).toEqual(file.worksheets.map(({ name }) => name));
    for (const [name, rows] of sheets) expect([name, rows]).toEqual([name, trimmed(shownValues(file, name))]);
  });

  test("the README leads to it, and it is small enough to fetch at once", () => {
    expect(readFileSync(join(root, "README.md"), "utf8")).toContain(`(docs/samples/${sample.file}.xlsx)`);
    expect(statSync(join(root, "docs/samples", `${sample.file}.xlsx`)).size).toBeLessThan(400_000);
  });
});

describe("what stands in them", () => {
  const table = async (file: string, name: string) => shownValues(await readWithExcelJs(committed(file)), name);

  test("the shop's schedule is that of its runs, worked out without the engine", async () => {
    const runs = await table("shop", "Runs");
    const job = buildJob({ runs, shoes: await table("shop", "Shoes"), rules: await table("shop", "Rules") });
    const blank = (rows: readonly (readonly unknown[])[]) => trimmed(rows as Shown[][]);
    expect(blank(await table("shop", "Schedule"))).toEqual(blank(scheduleTable(scheduleJob(job))));
    expect(records(runs).map(({ Area }) => Area)).toEqual(Array(11).fill("Ticket hall"));
  });

  test("the estimator's recap ends in a price that its lines add up to", async () => {
    const lines = records(await table("estimator", "Recap")).filter(({ Amount }) => typeof Amount === "number");
    const amount = (name: string) => lines.find(({ Line }) => Line === name)?.["Amount"] as number;
    const isSum = ({ Line }: Record<string, Shown>) => /^(Prime cost|Break-even|Total)$/.test(String(Line));
    const sum = lines.filter((line) => !isSum(line)).reduce((all, { Amount }) => all + (Amount as number), 0);
    expect(amount("Total")).toBeGreaterThan(amount("Prime cost"));
    expect(sum).toBeCloseTo(amount("Total"), 2);
  });

  test("the project manager sees the one run that changed since the issue, and what it adds", async () => {
    const changed = records(await table("project-manager", "Changes")).filter(({ Change }) => Change === "changed");
    expect(changed.map((row) => [row["Run or item"], row["Column or unit"]])).toEqual([["TH-03", "Route"]]);
    expect((await table("project-manager", "Change order")).length).toBeGreaterThan(5);
  });
});
