import { isUserError } from "../units/errors";
import { showInches } from "../units/show";
import type { Bench } from "./bench";
import { azimuths } from "./benchSides";
import { buildRunWith, type BuiltRun, type Piece } from "./buildRun";
import { dialOrWords } from "./dialOrWords";
import { isAngle, settingFor } from "./lineUp";
import { markFor, type LineUp } from "./marks";
import type { RunRow } from "./runsTable";
import { findSetup, type Setup, type SetupStep } from "./setupSearch";
import type { ShoeBook } from "./shoeBook";
import { turnWords } from "./turnWords";

/** Headers of the set-up table; lengths in inches from the conduit at the shoe. */
export const SETUP_HEADERS = [
  "Run",
  "Piece",
  "Step",
  "Bend",
  "Mark",
  "Line up",
  "Hook",
  "Dial",
  "Turn",
  "Room above",
  "Room below",
  "Room beside",
  "Reach behind",
  "Reach ahead",
  "Verdict",
] as const;

type SetupRow = (string | number)[];

/** How each piece of a job is set up on the bench: order, ends, room, and what is in the way. */
export function setupTable(rows: readonly RunRow[], shoes: ShoeBook, bench: Bench): SetupRow[] {
  const lines = rows.flatMap((row): SetupRow[] => {
    if ("problem" in row) return [problemLine(row.name, row.problem)];
    try {
      const built = buildRunWith(row.run, shoes);
      const pieces = built.pulls.flatMap((pull) => pull.pieces).filter((piece) => piece.bends.length > 0);
      return pieces.flatMap((piece) => pieceLines(built, piece, bench));
    } catch (error) {
      if (!isUserError(error)) throw error;
      return [problemLine(row.run.name, error.message)];
    }
  });
  return [[...SETUP_HEADERS], ...lines];
}

const problemLine = (name: string, message: string): SetupRow => [
  name,
  ...SETUP_HEADERS.slice(2).map(() => ""),
  `not built: ${message}`,
];

function pieceLines(built: BuiltRun, piece: Piece, bench: Bench): SetupRow[] {
  const setup = findSetup(piece, built.shoe, bench);
  const turn = azimuths(piece);
  return setup.steps.map((step, place) => {
    const bend = piece.bends[step.index];
    const before = setup.steps[place - 1];
    if (!bend) throw new RangeError(`piece ${piece.number} has no bend ${step.index + 1}`);
    const lineUp = lineUpFor(built, piece, step);
    const roll = before ? wrapped((turn[step.index] ?? 0) - (turn[before.index] ?? 0)) : 0;
    const { above, below, beside, behind, ahead } = step.room;
    return [
      built.run.name,
      piece.number,
      place + 1,
      step.index + 1,
      markFor(built.shoe, bend.start, bend.angle, lineUp, step.hook),
      lineUp,
      step.hook,
      dialOrWords(built.shoe, bend.angle),
      turnWords(roll, step.hook, before?.hook),
      above,
      below,
      beside,
      behind,
      ahead,
      verdict(setup, step, bench),
    ];
  });
}

/** The schedule's mark when the hook is the schedule's, else the arrow (a notch serves both ways). */
function lineUpFor(built: BuiltRun, piece: Piece, step: SetupStep): LineUp {
  const usual = settingFor(piece, step.index, built.shoe);
  if (usual.lineUp === "notch" || usual.hook === step.hook) return usual.lineUp;
  return "arrow";
}

/** An angle brought to above −180° and at most 180°. */
function wrapped(degrees: number): number {
  const turned = ((degrees % 360) + 360) % 360;
  return isAngle(turned, 360) ? 0 : turned > 180 + 1e-9 ? turned - 360 : turned;
}

function verdict(setup: Setup, step: SetupStep, bench: Bench): string {
  const words = [
    ...step.room.blocked,
    step.room.behind > bench.supportBeyond ? `support the hooked end, ${showInches(step.room.behind, 0)} out` : "",
    step.room.ahead > bench.supportBeyond ? `support the free end, ${showInches(step.room.ahead, 0)} out` : "",
  ].filter((text) => text !== "");
  if (setup.order === "none works") words.unshift("no order of bends works on this bench");
  else if (setup.order === "searched") words.unshift("another order than the schedule's");
  return words.length > 0 ? words.join("; ") : "clear";
}
