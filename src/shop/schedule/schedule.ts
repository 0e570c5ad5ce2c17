import { tidyDegrees } from "../../geometry/angle";
import { isFlexible } from "../../raceway/raceway";
import { remember } from "../../memory/remember";
import { linesOf, type Job, type UnbuiltRow } from "../job/job";
import { isPiece, pullParts, type BuiltRun, type FactoryElbow, type Piece } from "../run/builtRun";
import { dialOrWords } from "../shoe/dialOrWords";
import { bendKind } from "./lineUp";
import { markFor } from "../shoe/marks";
import { handbookSpacing } from "./handbook";
import { curveNotes, elbowNote, endNotes, scheduleNote } from "./scheduleNotes";
import { pointWords, turnWords } from "./turnWords";
import { usualStrokes } from "./usualStrokes";

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
  "Step",
] as const;

export type ScheduleHeader = (typeof SCHEDULE_HEADERS)[number];

/** One line of a schedule: a cell under each header. Numbers are inches and degrees, exact. */
export type ScheduleRow = Record<ScheduleHeader, string | number>;

/**
 * The schedule of a whole job. A run that cannot be read or built has one line that says why; so has, at the end, a rule
 * that cannot be read.
 */
export const scheduleJob = (job: Job): ScheduleRow[] => [...linesOf(job, scheduleRun, notBuilt), ...notRead(job)];

const notBuilt = ({ name, problem }: UnbuiltRow): ScheduleRow => wordsRow(name, "not built", problem);

const notRead = ({ rules }: Job): ScheduleRow[] =>
  rules.problems.map((problem) => wordsRow("Rules", "not read", problem));

/**
 * The schedule of one run: a line for each bend, in bending order (Step), Bend its number along the piece; a piece
 * without bends has one line, and so has a factory elbow, in its place between the pieces.
 */
export const scheduleRun: (built: BuiltRun) => readonly ScheduleRow[] = remember((built) => {
  const rows = built.pulls.flatMap((pull, index) =>
    pullParts(pull).flatMap((part) => (isPiece(part) ? pieceRows(built, part) : [elbowRow(built, part, index + 1)])),
  );
  const [first, ...rest] = rows;
  if (!first || !built.run.quantityWasZero) return rows;
  return [{ ...first, Note: [first.Note, "Quantity 0 counts as 1"].filter((note) => note !== "").join("; ") }, ...rest];
});

function pieceRows(built: BuiltRun, piece: Piece): ScheduleRow[] {
  const common = pieceCells(built, piece);
  if (piece.bends.length === 0) {
    const kind = isFlexible(built.run.raceway) ? "laid by hand" : "straight";
    return [{ ...common, Kind: kind, Note: [...curveNotes(built, piece), ...endNotes(built, piece)].join("; ") }];
  }
  const strokes = usualStrokes(piece, built.shoe);
  return strokes.map(({ index, lineUp, hook, roll }, place): ScheduleRow => {
    const bend = piece.bends[index]!;
    const mark = markFor(built.shoe, bend.start, bend.angle, lineUp, hook);
    return {
      ...common,
      Bend: index + 1,
      Kind: bendKind(bend, piece.bends[index - 1]),
      Mark: mark,
      "Line up": lineUp,
      Hook: hook,
      Angle: tidyDegrees(bend.angle),
      Dial: dialOrWords(built.shoe, bend.angle),
      Turn: turnWords(roll, hook, strokes[place - 1]?.hook),
      Plane: tidyDegrees(bend.plane),
      Note: scheduleNote(built, piece, strokes, place),
      "Mark 1/16": built.lengths.tape(mark),
      "Handbook off": handbookOff(built, piece, index),
      Step: place + 1,
    };
  });
}

const ELBOW_KIND = "factory elbow";

/** True for the line of a factory elbow: no piece, no mark, nothing for the bender to do. */
export const isElbowRow = ({ Kind }: ScheduleRow): boolean => Kind === ELBOW_KIND;

function elbowRow(built: BuiltRun, elbow: FactoryElbow, pull: number): ScheduleRow {
  const plane = tidyDegrees(elbow.plane);
  return {
    ...runCells(built, pull),
    Kind: ELBOW_KIND,
    Angle: tidyDegrees(elbow.angle),
    Turn: elbow.place === 0 ? "first bend" : pointWords(plane, "the bend before"),
    Plane: plane,
    Note: elbowNote(elbow, built.lengths),
  };
}

const pieceCells = (built: BuiltRun, piece: Piece): ScheduleRow => ({
  ...runCells(built, piece.pull),
  Piece: piece.number,
  "Cut length": piece.cutLength,
  "Cut 1/16": built.lengths.tape(piece.cutLength),
});

function runCells({ run }: BuiltRun, pull: number): ScheduleRow {
  return {
    ...emptyRow(run.name),
    Quantity: run.quantity,
    Pull: pull,
    Job: run.job,
    Area: run.area,
    Raceway: run.raceway,
    Size: run.size,
  };
}

const EMPTY = Object.fromEntries(SCHEDULE_HEADERS.map((header) => [header, ""])) as ScheduleRow;

const emptyRow = (name: string): ScheduleRow => ({ ...EMPTY, Run: name });

/** A line that says something in words. */
const wordsRow = (name: string, kind: string, message: string): ScheduleRow => ({
  ...emptyRow(name),
  Kind: kind,
  Note: message,
});

type Cell = string | number;

/** A table with its header row, ready for a sheet. */
export const scheduleTable = (rows: readonly ScheduleRow[]): Cell[][] => [[...SCHEDULE_HEADERS], ...rows.map(cellsOf)];

const cellsOf = (row: ScheduleRow): Cell[] => SCHEDULE_HEADERS.map((header) => row[header]);

/** The schedule of a whole job as a table; the cells of a run that did not change are the same arrays. */
export const jobScheduleTable = (job: Job): Cell[][] => [
  [...SCHEDULE_HEADERS],
  ...linesOf(job, runCellsOnce, (row) => cellsOf(notBuilt(row))),
  ...notRead(job).map(cellsOf),
];

const runCellsOnce = remember((built: BuiltRun) => scheduleRun(built).map(cellsOf));

/** Handbook spacing less exact spacing [in]; empty for a bend that no handbook spaces. */
function handbookOff(built: BuiltRun, piece: Piece, index: number): number | string {
  const spacing = handbookSpacing(piece, index, built.shoe);
  return spacing ? spacing.handbook - spacing.exact : "";
}
