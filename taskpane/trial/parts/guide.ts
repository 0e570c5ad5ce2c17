import { cellName } from "../../workbook/address";
import type { Cell } from "../../workbook/items";
import type { Read } from "../../excel/trial";
import { expected, line, seconds, type Bench, type Line, type Part } from "../types";
import { isAnswered } from "../waiting";
import examples from "../guideExamples.json";

/** A cell as the guide has it; an error is its code alone. */
type GuideCell = string | number | boolean | null | { readonly e: string };

export interface Example {
  readonly formula: string;
  /** Cells that it reads, from A1 on. */
  readonly cells?: readonly (readonly (string | number | null)[])[];
  readonly rows: readonly (readonly GuideCell[])[];
}

export interface GuideData {
  readonly tables: readonly {
    readonly name: string;
    readonly rows: readonly (readonly (string | number | null)[])[];
  }[];
  readonly examples: readonly Example[];
}

const GUIDE = examples as unknown as GuideData;

/** Columns where the cells stand that one formula reads, and the guide's tables. */
const [BESIDE, TABLES] = [40, 60];
/** Formulas that go into the sheet at once. */
const AT_ONCE = 80;

/** Every formula of the guide, refused ones too, as a person would enter it, held against what the guide prints. */
export const guidePart: Part = {
  id: "guide",
  title: "Every function on its guide's examples",
  run: (bench) => compareWithGuide(bench, GUIDE),
};

export async function compareWithGuide(bench: Bench, { tables, examples: all }: GuideData): Promise<Line[]> {
  const { scratch, step, until, tableName } = bench;
  step("writes the guide's tables");
  let column = TABLES;
  for (const { name, rows } of tables) {
    const width = rows[0]!.length;
    await scratch.enter(0, column, filled(rows, width));
    await scratch.addTable(tableName(name), 0, column, rows.length, width);
    column += width + 1;
  }
  const names = new RegExp(`\\b(${tables.map(({ name }) => name).join("|")})(?=\\[)`, "g");
  const differing: Line[] = [];
  let [row, slowest, same] = [0, 0, 0];
  for (let first = 0; first < all.length; first += AT_ONCE) {
    const part = all.slice(first, first + AT_ONCE);
    step(`formulas ${first + 1} to ${first + part.length} of ${all.length}`);
    const places = part.map((example) => {
      const at = row;
      row += Math.max(example.rows.length, example.cells?.length ?? 0) + 1;
      return at;
    });
    for (const [index, { cells }] of part.entries())
      if (cells) await scratch.enter(places[index]!, BESIDE, filled(cells, cells[0]!.length));
    const top = places[0]!;
    const formulas: Cell[][] = Array.from({ length: row - top }, () => [""]);
    part.forEach((example, index) => {
      const at = places[index]!;
      formulas[at - top] = [placed(example, at).replace(names, (name) => tableName(name))];
    });
    await scratch.enter(top, 0, formulas);
    const { milliseconds } = await until(async () => {
      const cells = await scratch.read(top, 0, row - top, 1);
      return places.every((at) => isAnswered(cells[at - top]![0])) ? true : undefined;
    });
    slowest = Math.max(slowest, milliseconds);
    const width = Math.max(...part.map(({ rows }) => rows[0]!.length)) + 1;
    const found = await scratch.read(top, 0, row - top, width);
    part.forEach((example, index) => {
      const at = places[index]! - top;
      const difference = differenceOf(example, found.slice(at, at + example.rows.length + 1));
      if (difference === undefined) same += 1;
      else differing.push(line(example.formula, difference, "differs"));
    });
  }
  return [
    expected(`${all.length} formulas give what the guide prints`, same === all.length, `${same} do`),
    ...differing,
    line(`longest wait for ${AT_ONCE} formulas`, seconds(slowest), "told"),
  ];
}

/** The formula where it stands in the sheet: the cells it reads are beside it. */
const placed = ({ formula, cells }: Example, row: number): string =>
  cells
    ? formula.replace(/\b([A-Z])(\d+)\b/g, (_, letter: string, number: string) =>
        cellName(row + Number(number) - 1, BESIDE + letter.charCodeAt(0) - 65),
      )
    : formula;

const filled = (rows: readonly (readonly (string | number | null)[])[], width: number): Cell[][] =>
  rows.map((cells) => Array.from({ length: width }, (_, at) => asText(cells[at] ?? "")));

/** In a cell without text format 1/2 would be a date, and 2026-11-02 one too. */
const asText = (cell: string | number): Cell =>
  typeof cell === "string" && /^[\d=+@-]/.test(cell) ? `'${cell}` : cell;

/** Numbers may differ by so much, as a share of them: Excel keeps some 15 digits. */
const NEARLY = 1e-9;

/** The first cell that is not as the guide has it, in words. @param found one row and one column more than the guide's */
function differenceOf({ rows }: Example, found: readonly (readonly Read[])[]): string | undefined {
  const width = rows[0]!.length;
  for (let row = 0; row <= rows.length; row++) {
    for (let column = 0; column <= width; column++) {
      const cell = found[row]?.[column] ?? "";
      const wanted = rows[row]?.[column] ?? "";
      if (isSame(wanted, cell)) continue;
      const place = row + column === 0 ? "" : ` in row ${row + 1}, column ${column + 1}`;
      return `${shown(cell)}${place}; the guide has ${shown(typeof wanted === "object" ? wanted.e : wanted)}`;
    }
  }
  return undefined;
}

function isSame(wanted: Exclude<GuideCell, null>, found: Read): boolean {
  if (typeof wanted === "object") return found === wanted.e;
  if (typeof wanted === "number" && typeof found === "number")
    return Math.abs(wanted - found) <= NEARLY * Math.max(1, Math.abs(wanted));
  return wanted === found;
}

const shown = (cell: Read): string => (cell === "" ? "nothing" : String(cell).slice(0, 80));
