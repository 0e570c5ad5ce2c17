import { CellFault } from "../../src/units/cellFault";

/** A value of one cell as the trade's code takes it. */
export type Plain = string | number | boolean | null | CellFault;

/**
 * An argument as Excel hands it over, made plain: with data types allowed, a cell may come as an object that names its
 * type. A number, text or range of them is given back as it is, without a copy.
 *
 * - an error, as an object or as the runtime's own error: a CellFault
 * - an entity (a card): its Value field, else its text
 * - an empty cell, or a range of one: null
 * - anything else that has a basic value: that
 */
export function plainArgument(argument: unknown): unknown {
  if (!Array.isArray(argument)) return isPlain(argument) ? argument : plainObject(argument);
  const rows: unknown[] = argument;
  const plain = rows.every(isPlainRow)
    ? rows
    : rows.map((row) => (Array.isArray(row) ? row.map(plainCell) : plainCell(row)));
  return isEmptyCell(plain) ? null : plain;
}

/** True for a range of one empty cell: so comes a range that was left out before another argument. */
const isEmptyCell = (rows: readonly unknown[]): boolean => {
  const [row] = rows;
  return rows.length === 1 && Array.isArray(row) && row.length === 1 && (row[0] === null || row[0] === "");
};

const isPlain = (value: unknown): boolean => typeof value !== "object" || value === null;

/** A loop: this looks at every cell of a job. */
function isPlainRow(row: unknown): boolean {
  if (!Array.isArray(row)) return isPlain(row);
  for (const cell of row) if (typeof cell === "object" && cell !== null) return false;
  return true;
}

/** In a single cell of a range, an array counts by its first element. */
function plainCell(cell: unknown): unknown {
  const plain = isPlain(cell) ? cell : plainObject(cell as object);
  return Array.isArray(plain) ? (plain as unknown[][])[0]?.[0] : plain;
}

/** What Excel's cell values have in common. */
interface CellObject {
  readonly type?: unknown;
  readonly basicType?: unknown;
  readonly basicValue?: unknown;
  readonly text?: unknown;
  readonly properties?: Readonly<Record<string, unknown>>;
  readonly elements?: unknown;
  /** Of the runtime's own errors. */
  readonly code?: unknown;
}

/** Stands for what an object gives that says nothing this add-in knows. */
const UNKNOWN = "#VALUE!";

function plainObject(value: unknown): Plain | unknown[][] {
  if (value instanceof CellFault) return value;
  const { type, basicType, basicValue, text, properties, elements, code } = value as CellObject;
  if (value instanceof Error) return new CellFault(typeof code === "string" ? code : UNKNOWN);
  if (type === "Empty") return null;
  if (type === "Array" && Array.isArray(elements)) {
    return elements.map((row: unknown) => (Array.isArray(row) ? row.map(plainCell) : [plainCell(row)]));
  }
  if (type === "Entity" || type === "LinkedEntity") {
    const field = properties?.["Value"];
    if (field !== undefined) return plainCell(field) as Plain;
    if (typeof text === "string" && text !== "") return text;
  }
  if (type === "Error" || basicType === "Error") return new CellFault(String(basicValue ?? UNKNOWN));
  if (basicValue === undefined || typeof basicValue === "object") return new CellFault(UNKNOWN);
  return basicValue as Plain;
}
