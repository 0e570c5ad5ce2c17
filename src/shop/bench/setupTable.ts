import { remember } from "../../memory/remember";
import type { Lengths } from "../../units/formatLength";
import type { Bench } from "./bench";
import { linesOf, type Job } from "../job/job";
import { runPieces, type BuiltRun, type Piece } from "../run/builtRun";
import { dialOrWords } from "../shoe/dialOrWords";
import { markFor } from "../shoe/marks";
import type { Setup, SetupStep } from "./setupSearch";
import { benchStrokes } from "./strokes";
import { turnWords } from "../schedule/turnWords";

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

/**
 * How each piece of a job is set up on the bench: order, ends, room, and what is in the way. Straight pieces and factory
 * elbows need no bench and have no line.
 */
export const setupTable = (job: Job, bench: Bench): SetupRow[] => [
  [...SETUP_HEADERS],
  ...linesOf(
    job,
    (built) => runLines(built, bench),
    ({ name, problem }) => wordsLine(name, `not built: ${problem}`),
  ),
  ...job.rules.problems.map((problem) => wordsLine("Rules", `not read: ${problem}`)),
];

const runLines = remember((built: BuiltRun, bench: Bench) =>
  runPieces(built).flatMap((piece) => pieceLines(built, piece, bench)),
);

const wordsLine = (name: string, words: string): SetupRow => [name, ...SETUP_HEADERS.slice(2).map(() => ""), words];

function pieceLines(built: BuiltRun, piece: Piece, bench: Bench): SetupRow[] {
  const { strokes, setup } = benchStrokes(piece, built.shoe, bench);
  return strokes.map(({ index, lineUp, hook, roll }, place) => {
    const [bend, step] = [piece.bends[index]!, setup.steps[place]!];
    const { above, below, beside, behind, ahead } = step.room;
    return [
      built.run.name,
      piece.number,
      place + 1,
      index + 1,
      markFor(built.shoe, bend.start, bend.angle, lineUp, hook),
      lineUp,
      hook,
      dialOrWords(built.shoe, bend.angle),
      turnWords(roll, hook, strokes[place - 1]?.hook),
      above,
      below,
      beside,
      behind,
      ahead,
      verdict(setup, step, bench, built.lengths),
    ];
  });
}

function verdict(setup: Setup, step: SetupStep, bench: Bench, { show }: Lengths): string {
  const words = [
    ...step.room.blocked.map((words) => words(show)),
    step.room.behind > bench.supportBeyond ? `support the hooked end, ${show(step.room.behind, 0)} out` : "",
    step.room.ahead > bench.supportBeyond ? `support the free end, ${show(step.room.ahead, 0)} out` : "",
  ].filter((text) => text !== "");
  if (setup.order === "none works") words.unshift("no order of bends works on this bench");
  else if (setup.order === "stopped")
    words.unshift("no order of bends was found for this bench; not every order was tried");
  else if (setup.order === "searched") words.unshift("another order than the schedule's");
  return words.length > 0 ? words.join("; ") : "clear";
}
