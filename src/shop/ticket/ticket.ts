import { tidyDegrees, type Degrees } from "../../geometry/angle";
import type { Path } from "../../geometry/path";
import type { Bench } from "../bench/bench";
import { isPiece, partsBeside, runPieces, type BuiltRun, type Piece } from "../run/builtRun";
import { dialOrWords } from "../shoe/dialOrWords";
import { bendKind } from "../schedule/lineUp";
import { markFor, type Hook, type LineUp } from "../shoe/marks";
import { pieceName, pieceShape, shapeCode } from "../run/pieceShape";
import type { Run } from "../run/runsTable";
import type { Shoe } from "../shoe/shoe";
import { benchStrokes } from "../bench/strokes";
import { usualStrokes, type Stroke } from "../schedule/usualStrokes";
import { shapeChecks, type ShapeCheck } from "./ticketChecks";
import { benchNotes, dialNotes, endsOf, sawnEnds, tailNotes } from "./ticketNotes";
import { ticketPath } from "./ticketPath";

/** One bend of a ticket, in bending order. */
export interface TicketBend {
  /** Its number along the stick from the datum end, as in drawings. */
  readonly number: number;
  /** The trade's word for it, with its place in what it is part of: "offset, 1 of 2". */
  readonly kind: string;
  /** From the datum end along the straight stick [in]. */
  readonly mark: number;
  readonly lineUp: LineUp;
  readonly hook: Hook;
  /** Finished angle [°]. */
  readonly angle: Degrees;
  /** Reading of the dial [°], or words where it does not reach. */
  readonly dial: number | string;
  /** From the plane of the bend before to this one's [°], clockwise seen from the datum end; 0 for the first. */
  readonly roll: number;
  readonly notes: readonly string[];
}

/** How a piece sits against the bent piece before it, once they are coupled. */
export type TicketJoin = {
  /** From the plane of the bend before this piece to the first bend's here [°], clockwise seen from the datum end. */
  readonly roll: number;
} & (
  | {
      /** Number of the piece with that bend. */
      readonly piece: number;
    }
  | {
      /** Angle [°] of the factory elbow that it is. */
      readonly elbow: number;
    }
);

/** What the bench needs to make one piece. Lengths [in], angles [°], all exact. */
export interface Ticket {
  readonly run: Run;
  readonly shoe: Shoe;
  /** Run and number of the piece, TH-01/2, and the code of its shape. */
  readonly name: string;
  readonly code: string;
  readonly piece: number;
  readonly pieces: number;
  readonly cutLength: number;
  readonly bends: readonly TicketBend[];
  readonly coupledBefore: boolean;
  readonly coupledAfter: boolean;
  readonly join?: TicketJoin;
  readonly checks: readonly ShapeCheck[];
  /** What the ends go to, in words: a box, the panel that From names, a coupling to another piece. */
  readonly ends: { readonly datum: string; readonly far: string };
  /** What is done to the ends where they were sawn, in words. */
  readonly sawnEnds: string;
  /** The finished piece, laid out as {@link ticketPath} tells. */
  readonly path: Path;
}

/**
 * The shop ticket of one piece of a run that was built. Its bends come in the order of the schedule or, where the bench is
 * known, in one that the bench has room for.
 */
export function ticketOf(built: BuiltRun, piece: Piece, bench?: Bench): Ticket {
  const { run, shoe } = built;
  const path = ticketPath(piece);
  const join = joinOf(built, piece);
  return {
    run,
    shoe,
    name: pieceName(run.name, piece.number),
    code: shapeCode(pieceShape(run, piece)),
    piece: piece.number,
    pieces: runPieces(built).length,
    cutLength: piece.cutLength,
    bends: ticketBends(built, piece, bench),
    coupledBefore: piece.coupledBefore,
    coupledAfter: piece.coupledAfter,
    ...(join ? { join } : {}),
    checks: shapeChecks(piece, path, shoe.outsideDiameter),
    ends: endsOf(built, piece),
    sawnEnds: sawnEnds(run, piece),
    path,
  };
}

/** The tickets of a run, in the order of its pieces; factory elbows need none. */
export const ticketsOf = (built: BuiltRun, bench?: Bench): Ticket[] =>
  runPieces(built).map((piece) => ticketOf(built, piece, bench));

function ticketBends(built: BuiltRun, piece: Piece, bench: Bench | undefined): TicketBend[] {
  const { shoe } = built;
  if (!bench) {
    return usualStrokes(piece, shoe).map((stroke) =>
      ticketBend(built, piece, stroke, tailNotes(built, piece, stroke.index)),
    );
  }
  const { strokes, setup } = benchStrokes(piece, shoe, bench);
  return strokes.map((stroke, place) => ticketBend(built, piece, stroke, benchNotes(built, setup, place)));
}

function ticketBend(built: BuiltRun, piece: Piece, stroke: Stroke, notes: readonly string[]): TicketBend {
  const { shoe } = built;
  const { index, lineUp, hook, roll } = stroke;
  const bend = piece.bends[index]!;
  const angle = tidyDegrees(bend.angle);
  const kind = bendKind(bend, piece.bends[index - 1]);
  const { place, of } = bend.corner;
  return {
    number: index + 1,
    kind: of > 1 ? `${kind}, ${place} of ${of}` : kind,
    mark: markFor(shoe, bend.start, bend.angle, lineUp, hook),
    lineUp,
    hook,
    angle,
    dial: dialOrWords(shoe, angle),
    roll: tidyDegrees(roll),
    notes: [...notes, ...dialNotes(built, piece, index)],
  };
}

function joinOf(built: BuiltRun, piece: Piece): TicketJoin | undefined {
  const first = piece.bends[0];
  if (!piece.coupledBefore || !first || first.place === 0) return undefined;
  const before = partsBeside(built, piece)
    .before.filter((part) => !isPiece(part) || part.bends.length > 0)
    .at(-1);
  const roll = tidyDegrees(first.plane);
  return before && (isPiece(before) ? { piece: before.number, roll } : { elbow: tidyDegrees(before.angle), roll });
}
