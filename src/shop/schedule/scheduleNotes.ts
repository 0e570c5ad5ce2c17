import { toRadians } from "../../geometry/angle";
import { isFlexible } from "../../raceway/raceway";
import { showDegrees } from "../../units/show";
import type { Lengths } from "../../units/formatLength";
import { ROUNDING } from "../../units/tolerances";
import { jointAfter, jointBefore, type BuiltRun, type FactoryElbow, type Piece, type PieceBend } from "../run/builtRun";
import { endInWords } from "../run/pullEnds";
import type { Pull } from "../../route/text/types";
import { handbookSpacing } from "./handbook";
import { settingFor } from "./lineUp";
import { tailNeeded } from "../shoe/shoe";
import { isSaddleCenter, type Stroke } from "./usualStrokes";

/** Differences smaller than this are not worth a note [in]; a tape reads 1/16. */
const WORTH_SAYING = 0.001;

/** What the person at the bench should know about a stroke; of a piece's last one, about its ends too. */
export function scheduleNote(built: BuiltRun, piece: Piece, strokes: readonly Stroke[], place: number): string {
  const { index } = strokes[place]!;
  const center = index > place && isSaddleCenter(piece, index) ? ["the center first"] : [];
  return [
    ...center,
    ...bendNotes(built, piece, index),
    ...(place === strokes.length - 1 ? endNotes(built, piece) : []),
  ].join("; ");
}

function bendNotes(built: BuiltRun, piece: Piece, index: number): string[] {
  const notes: string[] = [];
  const bend = piece.bends[index]!;
  const { corner } = bend;
  if (corner.of > 1) notes.push(corner.kind === "sweep" ? `shot ${corner.place} of ${corner.of}` : placeWords(bend));
  if (settingFor(piece, index, built.shoe).lineUp === "star") {
    notes.push(
      `star ${built.lengths.show(bend.legBefore + built.shoe.outsideDiameter)} from the back of the bend before`,
    );
  }
  const spacing = handbookSpacing(piece, index, built.shoe);
  if (spacing) {
    const off = spacing.handbook - spacing.exact;
    notes.push(
      `spacing ${built.lengths.show(spacing.exact)}; handbook (${spacing.rule}) ${built.lengths.show(spacing.handbook)}, ` +
        (Math.abs(off) < WORTH_SAYING
          ? "no difference"
          : `${built.lengths.show(Math.abs(off))} too ${off > 0 ? "long" : "short"}`),
    );
  }
  const tail = shortTail(built, piece, index);
  if (tail) notes.push(`${tail}: bend it long and cut`);
  return notes;
}

/** What the person who puts the run together should know about a factory elbow. */
export function elbowNote({ corner, radius, straight }: FactoryElbow, lengths: Lengths): string {
  const part = corner.of > 1 ? [`${corner.kind}, ${corner.place} of ${corner.of}`] : [];
  return [`bought; ${laidOutAt(radius, lengths)}`, straightEnds(straight, lengths), ...part].join("; ");
}

function straightEnds({ end, before, after }: FactoryElbow["straight"], { show }: Lengths): string {
  if (end === 0) return "straight ends not known, none counted";
  const ends = `straight ends ${show(end)}`;
  if (Math.min(before, after) >= end - ROUNDING) return ends;
  return `${ends}, room for ${show(before)} before and ${show(after)} after`;
}

/** At what radius [in] a factory elbow is laid out, in words. */
export const laidOutAt = (radius: number, { show }: Lengths): string => `laid out at ${show(radius)} radius`;

const placeWords = ({ corner }: PieceBend): string => `bend ${corner.place} of ${corner.of}`;

/** Tells when the end on the hook's side is too short for the shoe to hold. */
export function shortTail(built: BuiltRun, piece: Piece, index: number): string | undefined {
  const bend = piece.bends[index]!;
  const { hook } = settingFor(piece, index, built.shoe);
  const end = bend.start + bend.radius * toRadians(bend.angle);
  const tail = hook === "datum" ? bend.start : piece.cutLength - end;
  const needed = tailNeeded(built.shoe);
  if (tail >= needed) return undefined;
  return `the ${hook} end has ${built.lengths.show(tail, 2)} to hold; the shoe needs ${built.lengths.show(needed, 2)}`;
}

/** What is laid by hand is not bent on a shoe: how much it turns, and how tight. */
export function curveNotes({ run, pulls, lengths }: BuiltRun, { pull }: Piece): string[] {
  if (!isFlexible(run.raceway)) return [];
  const { bends } = pulls[pull - 1]!.parts;
  if (bends.length === 0) return ["not bent on a shoe"];
  const degrees = bends.reduce((sum, { angle }) => sum + angle, 0);
  const radius = Math.min(...bends.map((bend) => bend.radius));
  return [`not bent on a shoe; its pull turns ${showDegrees(degrees)}, at ${lengths.show(radius)} radius or more`];
}

/** What is on the ends of a piece: couplings, unions, a conduit body, a flexible piece. */
export function endNotes({ pulls }: BuiltRun, piece: Piece): string[] {
  const pull = pulls[piece.pull - 1]!;
  if (pull.asked.length === 0) return [...couplingNotes(piece), ...fittingNotes(pulls, piece)];
  const [before, after] = [jointBefore(pull, piece), jointAfter(pull, piece)];
  return [
    ...(before ? [`${before} on the datum end`] : []),
    ...(after ? [`${after} on the far end`] : []),
    ...fittingNotes(pulls, piece),
  ];
}

function couplingNotes(piece: Piece): string[] {
  if (piece.coupledBefore && piece.coupledAfter) return ["couplings on both ends"];
  if (piece.coupledBefore) return ["coupling on the datum end"];
  return piece.coupledAfter ? ["coupling on the far end"] : [];
}

function fittingNotes(pulls: BuiltRun["pulls"], piece: Piece): string[] {
  const [before, own] = [pulls[piece.pull - 2]?.pull, pulls[piece.pull - 1]!.pull];
  const starts = before && !piece.coupledBefore && isFitting(before);
  return [
    ...(starts ? [`datum end at ${endInWords(before)}`] : []),
    ...(!piece.coupledAfter && isFitting(own) ? [`far end at ${endInWords(own)}`] : []),
  ];
}

const isFitting = ({ end }: Pull): boolean => end !== "box" && end !== "open";
