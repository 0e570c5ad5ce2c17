import type { CellValue } from "../../../workbench/engine";
import { openHeadless } from "../../../workbench/engine/headless";
import { PLAIN_FUNCTIONS, type PlainFunction } from "../../../workbench/workbook/file/plainFunctions";
import { guarded, plainNames, toFileLambda } from "../../../workbench/workbook/file/plainSheet";
import { builtFunctions, demoWorkbook } from "./demoFile";
import { partOf, readWithExcelJs, shownValues } from "./otherReader";

jest.setTimeout(120_000);

/** Good and bad values for an input, the limits themselves among them; asymmetric, so that swapped inputs show. */
function tries({ name, unit }: PlainFunction["inputs"][number]): number[] {
  if (unit.startsWith("°")) return name === "springback" ? [0, 3, 45, -1] : [22.5, 30, 61, 90, 179, 0, -10, 180, 200];
  if (name === "radius") return [4, 7.25, 0];
  return name === "diameter" || name === "lead" ? [0.706, 1.315] : [11.5, 37, 3, 0, -2];
}

const combinations = (inputs: PlainFunction["inputs"]): number[][] =>
  inputs.reduce<number[][]>((rows, input) => rows.flatMap((row) => tries(input).map((value) => [...row, value])), [[]]);

/** The add-in's call. A radius of 0 stands for sharp corners, which the add-in takes when the radius is left out. */
function addInCall(plain: PlainFunction, values: readonly number[]): string {
  const sharp = plain.inputs.some(({ unit }, index) => unit.includes("sharp") && values[index] === 0);
  const names = plain.inputs.map(({ name }) => name).slice(0, sharp ? -1 : undefined);
  const call = plain.addIn ?? `${plain.name}(${names.join(",")})`;
  const filled = plain.inputs.reduce(
    (text, { name }, at) => text.replace(new RegExp(`\\b${name}\\b`), String(values[at])),
    call,
  );
  return `=${filled.replace(/(BEND|OFFSET|SADDLE|STUB|KICK)\./, "CONDUIT.$1.")}`;
}

async function valuesOf(formulas: string[][]): Promise<CellValue[][]> {
  const cellData = Object.fromEntries(
    formulas.map((row, at) => [at, Object.fromEntries(row.map((f, column) => [column, { f }]))]),
  );
  const size = { rowCount: formulas.length + 10, columnCount: 10 };
  const sheets = { s: { id: "s", name: "Tries", ...size, cellData } };
  const { book, close } = openHeadless(builtFunctions(), { id: "w", sheetOrder: ["s"], sheets });
  await book.settled();
  const { values } = book.sheet("Tries").used()!;
  close();
  return values;
}

/** Relative difference allowed between two ways to compute with doubles. */
const CLOSE = 1e-9;

test.each(PLAIN_FUNCTIONS.map((plain) => [plain.name, plain] as const))(
  "%s by built-in functions gives what the add-in gives, and refuses what it refuses",
  async (_, plain) => {
    const rows = combinations(plain.inputs);
    const lambda = plainNames().find(({ name }) => name === plain.name)!.formula;
    const values = await valuesOf(
      rows.map((row) => [addInCall(plain, row), `=${guarded(plain, row.map(String))}`, `${lambda}(${row.join(",")})`]),
    );
    const wrong = values.flatMap(([addIn, byCells, byLambda], at) => {
      const agree = (other: CellValue | undefined) =>
        typeof addIn === "number"
          ? typeof other === "number" && Math.abs(other - addIn) <= CLOSE * Math.max(1, Math.abs(addIn))
          : addIn === "#VALUE!" && other === plain.otherwise;
      return agree(byCells) && agree(byLambda) ? [] : [{ inputs: rows[at], addIn, byCells, byLambda }];
    });
    expect(wrong).toEqual([]);
    expect(values.filter(([addIn]) => typeof addIn === "number").length).toBeGreaterThan(2);
    expect(values.filter(([addIn]) => typeof addIn !== "number").length).toBeGreaterThan(0);
  },
);

test("the plain workbook has the sheet, live, and the names as files spell them", async () => {
  const bytes = await demoWorkbook(true);
  const book = await readWithExcelJs(bytes);
  const bends = shownValues(book, "Bends");
  const result = (name: string) => bends.find(([first]) => first === name)![5] as number;
  // 6 in. at 30° on a 4 in. radius: 6/0.5 less the gain 2·4·tan 15° − 4·π/6, by hand.
  expect(result("OFFSET.SPACING")).toBeCloseTo(12 - (8 * 0.2679491924311227 - (4 * Math.PI) / 6), 12);
  expect(book.getWorksheet("Bends")!.getCell("F2").formula).toMatch(/^IF\(COUNT\(C2,D2\)=2,/);
  expect(partOf(bytes, "xl/workbook.xml")).toContain(
    '<definedName name="BEND.ARC">_xlfn.LAMBDA(_xlpm.angle,_xlpm.radius,IF(COUNT(_xlpm.angle,_xlpm.radius)=2,',
  );
});

test("an empty or wordy input is told", async () => {
  const arc = PLAIN_FUNCTIONS.find(({ name }) => name === "BEND.ARC")!;
  expect(await valuesOf([[`=${guarded(arc, ["Z9", "4"])}`], [`=${guarded(arc, ['"x"', "4"])}`]])).toEqual([
    ["every input must be a number"],
    ["every input must be a number"],
  ]);
});

test("words in quotes keep the names of inputs as words", () => {
  expect(toFileLambda('=LAMBDA(angle,IF(angle>0,1,"angle must be above 0"))')).toBe(
    '_xlfn.LAMBDA(_xlpm.angle,IF(_xlpm.angle>0,1,"angle must be above 0"))',
  );
});
