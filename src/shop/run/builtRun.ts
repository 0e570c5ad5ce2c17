import type { Degrees } from "../../geometry/angle";
import type { PathParts } from "../../geometry/path";
import type { JointFitting, Pull, RouteCorner } from "../../route/text/types";
import type { Lengths } from "../../units/formatLength";
import type { Run } from "./runsTable";
import { ROUNDING } from "../../units/tolerances";
import type { RunFittings } from "../fittings/factoryElbows";
import type { Shoe } from "../shoe/shoe";

/** A bend of a run, whoever makes it. */
export interface RunBend {
  readonly corner: RouteCorner;
  /** Finished angle [°] and centerline radius [in]. */
  readonly angle: Degrees;
  readonly radius: number;
  /** Rotation of the bend plane against the bend before it in the run [°], GEOMETRY of the run. */
  readonly plane: Degrees;
  /** Place of the bend in its pull, 0 for the first. */
  readonly place: number;
}

/** A bend of a piece, placed on the straight stick. */
export interface PieceBend extends RunBend {
  /** Where the bend starts, along the straight piece from its datum end [in]. */
  readonly start: number;
  /** Corner-to-corner length of the leg before this bend [in]. */
  readonly legBefore: number;
}

/** One length of conduit to cut and bend. */
export interface Piece {
  /** 1 for the run's first piece, counted through all its pulls. */
  readonly number: number;
  /** 1 for the part of the run before its first box. */
  readonly pull: number;
  readonly cutLength: number;
  readonly bends: readonly PieceBend[];
  /** True when a coupling, not a box, is on that end. */
  readonly coupledBefore: boolean;
  readonly coupledAfter: boolean;
}

/** A bend that is bought ready-made. */
export interface FactoryElbow extends RunBend {
  /** Straight conduit at its ends [in]: as it comes, and as much of it as the run has room for. */
  readonly straight: { readonly end: number; readonly before: number; readonly after: number };
  /** Number of the last piece before it in the run, 0 where there is none. */
  readonly afterPiece: number;
}

/** A part of the run between boxes. */
export interface BuiltPull {
  readonly pull: Pull;
  readonly parts: PathParts;
  readonly pieces: readonly Piece[];
  readonly elbows: readonly FactoryElbow[];
  /** Developed positions of the couplings [in]: wherever two pieces or elbows meet. */
  readonly joints: readonly number[];
  /** Those of them that the route asks for, with their fitting. */
  readonly asked: readonly AskedJoint[];
}

/** A joint that the route asks for: its developed position [in]. */
export interface AskedJoint {
  readonly at: number;
  readonly fitting: JointFitting;
  readonly step: number;
}

/** A run worked out with its shoe. */
export interface BuiltRun {
  readonly run: Run;
  readonly shoe: Shoe;
  readonly fittings: RunFittings;
  readonly pulls: readonly BuiltPull[];
  /** How its lengths are told. */
  readonly lengths: Lengths;
  /** True when its route ends in a box. */
  readonly endsInBox: boolean;
  /** Where no shoe is listed for it, so that its bends are bought: those of them that no factory elbow has [°]. */
  readonly unlisted?: readonly Degrees[];
}

/** What a pull is put together from. */
export type PullPart = Piece | FactoryElbow;

export const isPiece = (part: PullPart): part is Piece => "cutLength" in part;

/** The pieces and elbows of a pull in their order from the datum end. */
export function pullParts({ pieces, elbows }: BuiltPull): PullPart[] {
  const before = (pieces[0]?.number ?? Infinity) - 1;
  return [
    ...elbows.filter(({ afterPiece }) => afterPiece <= before),
    ...pieces.flatMap((piece): PullPart[] => [
      piece,
      ...elbows.filter(({ afterPiece }) => afterPiece === piece.number),
    ]),
  ];
}

/** What comes before a piece in its pull and what after it, from the datum end. */
export function partsBeside({ pulls }: BuiltRun, { number, pull }: Piece): { before: PullPart[]; after: PullPart[] } {
  const parts = pullParts(pulls[pull - 1]!);
  const place = parts.findIndex((part) => isPiece(part) && part.number === number);
  return { before: parts.slice(0, place), after: parts.slice(place + 1) };
}

/** Every piece of a run. */
export const runPieces = ({ pulls }: BuiltRun): Piece[] => pulls.flatMap(({ pieces }) => pieces);

/** What joins a piece to what comes before it in its pull; undefined where its pull begins. */
export const jointBefore = (pull: BuiltPull, piece: Piece): JointFitting | undefined =>
  jointAt(pull, partPlace(pull, piece) - 1);

/** What joins a piece to what comes after it in its pull; undefined where its pull ends. */
export const jointAfter = (pull: BuiltPull, piece: Piece): JointFitting | undefined =>
  jointAt(pull, partPlace(pull, piece));

const partPlace = (pull: BuiltPull, piece: Piece): number => pullParts(pull).indexOf(piece);

function jointAt({ joints, asked }: BuiltPull, place: number): JointFitting | undefined {
  const joint = joints[place];
  if (joint === undefined) return undefined;
  return asked.find(({ at }) => Math.abs(at - joint) < ROUNDING)?.fitting ?? "coupling";
}
