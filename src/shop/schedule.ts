import { isUserError } from "../units/errors";
import { formatLength } from "../units/length";
import { buildRunWith, type BuiltRun, type Piece } from "./buildRun";
import { dialOrWords } from "./dialOrWords";
import { bendKind, settingFor, type Setting } from "./lineUp";
import { markFor } from "./marks";
import type { RunRow } from "./runsTable";
import { handbookSpacing } from "./handbook";
import { scheduleNote } from "./scheduleNotes";
import type { ShoeBook } from "./shoeBook";
import { turnWords } from "./turnWords";

/** Headers of a bend schedule. The first thirteen are fixed; more may follow them. */
export const SCHEDULE_HEADERS = [
  "Run",
  "Piece",
  "Cut length",
  "Bend",
  "Kind",
  "Mark",
  "Line up",
  "Hook",
  "Angle",
  "Dial",
  "Turn",
  "Plane",
  "Note",
  "Quantity",
  "Pull",
  "Cut 1/16",
  "Mark 1/16",
  "Handbook off",
  "Job",
  "Area",
  "Raceway",
  "Size",
] as const;

/** One line of a schedule: a cell under each header. Numbers are inches and degrees, exact. */
export type ScheduleRow = Record<(typeof SCHEDULE_HEADERS)[number], string | number>;

/** The schedule of a whole job. A run that cannot be read or built has one line that says why. */
export function scheduleRuns(rows: readonly RunRow[], shoes: ShoeBook): ScheduleRow[] {
  return rows.flatMap((row) => {
    if ("problem" in row) return [problemRow(row.name, row.problem)];
    try {
      return scheduleRun(buildRunWith(row.run, shoes));
    } catch (error) {
      if (!isUserError(error)) throw error;
      return [problemRow(row.run.name, error.message)];
    }
  });
}

/** The schedule of one run: a line for each bend, in bending order; a piece without bends has one line. */
export function scheduleRun(built: BuiltRun): ScheduleRow[] {
  const rows = built.pulls.flatMap((pull) => pull.pieces).flatMap((piece) => pieceRows(built, piece));
  const [first, ...rest] = rows;
  if (!first || !built.run.quantityWasZero) return rows;
  return [{ ...first, Note: [first.Note, "Quantity 0 counts as 1"].filter((note) => note !== "").join("; ") }, ...rest];
}

function pieceRows(built: BuiltRun, piece: Piece): ScheduleRow[] {
  const common = pieceCells(built, piece);
  if (piece.bends.length === 0) return [{ ...common, Kind: "straight", Note: scheduleNote(built, piece, undefined) }];
  const settings = piece.bends.map((_, index) => settingFor(piece, index, built.shoe));
  return piece.bends.map((bend, index): ScheduleRow => {
    const setting = settings[index] as Setting;
    const mark = markFor(built.shoe, bend.start, bend.angle, setting.lineUp, setting.hook);
    return {
      ...common,
      Bend: index + 1,
      Kind: bendKind(bend, piece.bends[index - 1]),
      Mark: mark,
      "Line up": setting.lineUp,
      Hook: setting.hook,
      Angle: tidyDegrees(bend.angle),
      Dial: dialOrWords(built.shoe, tidyDegrees(bend.angle)),
      Turn: turnWords(bend.plane, setting.hook, settings[index - 1]?.hook),
      Plane: tidyDegrees(bend.plane),
      Note: scheduleNote(built, piece, index),
      "Mark 1/16": formatLength(mark, 16, "feet"),
      "Handbook off": handbookOff(built, piece, index),
    };
  });
}

/** Degrees without the last digits, which are rounding: 22.5, not 22.500000000000004. */
const tidyDegrees = (degrees: number): number => Number(degrees.toFixed(9)) + 0;

function pieceCells(built: BuiltRun, piece: Piece): ScheduleRow {
  const { run } = built;
  return {
    ...emptyRow(run.name),
    Piece: piece.number,
    "Cut length": piece.cutLength,
    Quantity: run.quantity,
    Pull: piece.pull,
    "Cut 1/16": formatLength(piece.cutLength, 16, "feet"),
    Job: run.job,
    Area: run.area,
    Raceway: run.raceway,
    Size: run.size,
  };
}

const EMPTY = Object.fromEntries(SCHEDULE_HEADERS.map((header) => [header, ""])) as ScheduleRow;

const emptyRow = (name: string): ScheduleRow => ({ ...EMPTY, Run: name });

const problemRow = (name: string, message: string): ScheduleRow => ({
  ...emptyRow(name),
  Kind: "not built",
  Note: message,
});

/** A table with its header row, ready for a sheet. */
export const scheduleTable = (rows: readonly ScheduleRow[]): (string | number)[][] => [
  [...SCHEDULE_HEADERS],
  ...rows.map((row) => SCHEDULE_HEADERS.map((header) => row[header])),
];

/** Handbook spacing less exact spacing [in]; empty for a bend that no handbook spaces. */
function handbookOff(built: BuiltRun, piece: Piece, index: number): number | string {
  const spacing = handbookSpacing(piece, index, built.shoe);
  return spacing ? spacing.handbook - spacing.exact : "";
}
