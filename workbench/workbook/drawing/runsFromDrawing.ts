import { drawnRows, type DrawnRows } from "../../../src/drawn/drawnRows";
import { readDrawing } from "../../../src/drawn/file/readDrawing";
import { notReadWords } from "../../../src/drawn/notReadWords";
import { planLayers } from "../../../src/drawn/layers";
import { DRAWING_UNITS, unitNamed, type DrawingUnit } from "../../../src/drawn/units";
import { readRaceway } from "../../../src/raceway/raceway";
import { readTradeSize } from "../../../src/raceway/tradeSize";
import { USUAL_FITTINGS } from "../../../src/shop/fittings/fittingRule";
import { readShoes } from "../../../src/shop/shoe/shoeBook";
import { INPUTS } from "../../../taskpane/workbook/design/sheets";
import type { RunList } from "../csv/runsFromCsv";

/** What a person says of a drawing that it does not say itself. */
export interface DrawingWishes {
  readonly unit?: string | undefined;
  /** Raceway and size of layers whose names say none: `EMT 3/4`. */
  readonly drawnAs?: string | undefined;
}

export interface RunsOfDrawing {
  readonly runs: RunList;
  /** A line for each run, taken or not, and for each thing that was not read. */
  readonly report: readonly string[];
  readonly left: number;
}

/**
 * The runs of a drawing as rows of Runs, by the built-in shoes.
 * @throws Error when the unit is not known, or nothing can be taken
 */
export function runsFromDrawing(text: string, name: string, wishes: DrawingWishes): RunsOfDrawing {
  const drawing = readDrawing(text, name);
  const unit = wishes.unit === undefined ? unitNamed(drawing.unit) : asUnit(wishes.unit);
  const inches = unit ? DRAWING_UNITS[unit] : drawing.unit;
  const known = Object.keys(DRAWING_UNITS).join(", ");
  if (inches === null) throw new Error(`${name} does not say its unit; add --unit with one of ${known}.`);
  const layers = planLayers(drawing, asConduit(wishes.drawnAs));
  const open = layers.filter(({ take }) => !take).map(({ layer }) => layer);
  const found = drawnRows(drawing, { unit: inches, layers, shoes: readShoes(null), fittings: USUAL_FITTINGS });
  const taken = found.rows.filter((row) => row.taken);
  const report = [
    ...open.map((layer) => `${layer}: not taken, for its name says no raceway and size; add --drawn-as "EMT 3/4"`),
    ...reportOf(found),
  ];
  if (taken.length === 0) throw new Error([`${name}: no run was taken.`, ...report].join("\n"));
  const headers = [...INPUTS.Runs];
  const cells = { Run: "run", Raceway: "raceway", Size: "size", Route: "route", Start: "start" } as const;
  const rows = taken.map((row) =>
    headers.map((header) => (header in cells ? row[cells[header as keyof typeof cells]] : null)),
  );
  return { runs: { headers, rows }, report, left: open.length + found.rows.length - taken.length };
}

function reportOf({ rows, notRead, turned }: DrawnRows): string[] {
  return [
    ...(turned === 0 ? [] : [`the drawing lies ${turned.toFixed(2)}° from north; it was turned back`]),
    ...rows.map(({ run, words, note }) => `${run}: ${words}${note && `; ${note}`}`),
    ...notRead.map((one) => `not read: ${notReadWords(one)}`),
  ];
}

function asUnit(word: string): DrawingUnit {
  const unit =
    Object.keys(DRAWING_UNITS).find((name) => name.startsWith(word.toLowerCase())) ?? SHORT[word.toLowerCase()];
  if (unit) return unit as DrawingUnit;
  throw new Error(`--unit must be one of ${Object.keys(DRAWING_UNITS).join(", ")}; got ${word}.`);
}

const SHORT: Readonly<Record<string, DrawingUnit>> = {
  in: "inches",
  ft: "feet",
  mm: "millimeters",
  cm: "centimeters",
  m: "meters",
};

function asConduit(text: string | undefined) {
  if (text === undefined) return {};
  const [, raceway, size] = /^(.*\S)\s+(\S+)$/.exec(text.trim()) ?? [];
  return { raceway: readRaceway(raceway ?? text, "--drawn-as"), size: readTradeSize(size ?? "", "--drawn-as") };
}
