import { rememberTable } from "../../memory/tables";
import { readTable, type TableRow } from "../../table/headerTable";
import { InputError, isUserError, quoteValue } from "../../units/errors";
import { toInches } from "../../units/length";

/** The bench as the set-up search sees it. Lengths in inches, from the centerline of the conduit at the shoe. */
export interface Bench {
  /** Plane the conduit is bent in: upright (past the table's edge) or flat on the table. */
  readonly plane: "vertical" | "horizontal";
  /** In the vertical plane: which way the bend curls. */
  readonly curls: "up" | "down";
  /** Which part moves while bending: the hooked end with the shoe, or the free end. */
  readonly swings: "hooked end" | "free end";
  /** Conduit above the floor. */
  readonly height: number;
  /** Free room above the conduit; Infinity when nothing is overhead. */
  readonly roomAbove: number;
  /** Free room to either side of the conduit. */
  readonly roomBeside: number;
  /** Table top below the conduit; it reaches `tableLength` behind the shoe and is `tableWidth` wide. */
  readonly tableDrop: number;
  readonly tableLength: number;
  readonly tableWidth: number;
  /** A straight end that reaches farther than this wants a support. */
  readonly supportBeyond: number;
}

/** Common practice, no source: measure your own bench. */
export const USUAL_BENCH: Bench = {
  plane: "vertical",
  curls: "up",
  swings: "hooked end",
  height: 36,
  roomAbove: Infinity,
  roomBeside: Infinity,
  tableDrop: 4,
  tableLength: 0,
  tableWidth: 0,
  supportBeyond: 60,
};

const LENGTHS = {
  "shoe height": "height",
  "room above": "roomAbove",
  "room beside": "roomBeside",
  "table drop": "tableDrop",
  "table length": "tableLength",
  "table width": "tableWidth",
  "support beyond": "supportBeyond",
} as const;

const WORDS = {
  plane: ["vertical", "horizontal"],
  curls: ["up", "down"],
  swings: ["hooked end", "free end"],
} as const;

/**
 * Reads the Bench range: two columns, Setting and Value. Settings: Plane, Curls, Swings, Shoe height, Room above, Room
 * beside, Table drop, Table length, Table width, Support beyond. What is left out keeps its usual value.
 * @throws InputError naming the setting, what was expected and the value
 */
export const readBench: (range: unknown) => Bench = rememberTable((range) => {
  if (range === null || range === undefined) return USUAL_BENCH;
  const table = readTable(range, "bench", [
    { name: "Setting", required: true },
    { name: "Value", required: true, zero: true },
  ]);
  let bench: Bench = USUAL_BENCH;
  for (const row of table.rows) {
    const [name, value] = [cellOf(row, "Setting"), cellOf(row, "Value")];
    const setting = String(name ?? "")
      .trim()
      .toLowerCase();
    bench = { ...bench, ...readSetting(setting, value, row.rowNumber) };
  }
  return bench;
});

function cellOf(row: TableRow, column: string): unknown {
  try {
    return row.get(column);
  } catch (error) {
    throw isUserError(error) ? new InputError(`bench row ${row.rowNumber}: ${error.message}`) : error;
  }
}

function readSetting(setting: string, value: unknown, rowNumber: number): Partial<Bench> {
  if (setting in LENGTHS) {
    return { [LENGTHS[setting as keyof typeof LENGTHS]]: toInches(value, `bench "${setting}"`, { min: 0, max: 600 }) };
  }
  if (setting in WORDS) {
    const words: readonly string[] = WORDS[setting as keyof typeof WORDS];
    const word = String(value ?? "")
      .trim()
      .toLowerCase();
    if (words.includes(word)) return { [setting]: word };
    throw new InputError(`bench "${setting}" must be ${words.join(" or ")}; got ${quoteValue(value)}.`);
  }
  const known = [...Object.keys(WORDS), ...Object.keys(LENGTHS)].join(", ");
  throw new InputError(`bench row ${rowNumber}: Setting must be one of ${known}; got ${quoteValue(setting)}.`);
}
