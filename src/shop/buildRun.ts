import { toRadians } from "../geometry/angle";
import { pathParts, type PathParts } from "../geometry/path";
import { pathProblems, pullPath } from "../route/problems";
import { readRoute } from "../route/readRoute";
import { resolveRoute } from "../route/resolveRoute";
import type { Pull, RouteCorner } from "../route/types";
import { outsideDiameter } from "../raceway/dimensions";
import { minimumRadius } from "../raceway/minimumRadius";
import { InputError, NotListedError } from "../units/errors";
import { showInches } from "../units/show";
import { dividePull, type JoinZone } from "./pieces";
import type { Run } from "./runsTable";
import { tailNeeded, type Shoe } from "./shoe";
import type { ShoeBook } from "./shoeBook";

/** A bend of a piece, placed on the straight stick. */
export interface PieceBend {
  readonly corner: RouteCorner;
  /** Finished angle [°] and centerline radius [in]. */
  readonly angle: number;
  readonly radius: number;
  /** Where the bend starts, along the straight piece from its datum end [in]. */
  readonly start: number;
  /** Rotation of the bend plane against the bend before it in the run [°], GEOMETRY of the run. */
  readonly plane: number;
  /** Corner-to-corner length of the leg before this bend [in]. */
  readonly legBefore: number;
  /** Place of the bend in its pull, 0 for the first. */
  readonly place: number;
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

/** A part of the run between boxes. */
export interface BuiltPull {
  readonly pull: Pull;
  readonly parts: PathParts;
  readonly pieces: readonly Piece[];
  /** Developed positions of the couplings [in]. */
  readonly joints: readonly number[];
}

/** A run worked out with its shoe. */
export interface BuiltRun {
  readonly run: Run;
  readonly shoe: Shoe;
  readonly pulls: readonly BuiltPull[];
}

/** What a coupling needs beside a bend, besides the tail the shoe holds [in]. Common practice, no source. */
const COUPLING_SEAT = 1;

/**
 * Works a run out: route to corner points, corner points to bends on straight pieces.
 * @throws InputError when the route cannot be read or cannot be built with this shoe
 */
export function buildRun(run: Run, shoe: Shoe): BuiltRun {
  const { pulls } = resolveRoute(readRoute(run.route), shoe.radius, shoe.outsideDiameter);
  const problems = pulls.flatMap((pull) => pathProblems(pull));
  if (problems.length > 0) throw new InputError(problems.join(" "));
  let pieceNumber = 0;
  return {
    run,
    shoe,
    pulls: pulls.map((pull, index) => {
      const built = buildPull(pull, index + 1, pieceNumber, run.stick, shoe);
      pieceNumber += built.pieces.length;
      return built;
    }),
  };
}

/**
 * Works a run out with the shoe that the shop has for it. Straight conduit needs no shoe: where none is listed, a run
 * without bends is built all the same.
 */
export function buildRunWith(run: Run, shoes: ShoeBook): BuiltRun {
  let shoe: Shoe;
  try {
    shoe = shoes.shoeFor(run.raceway, run.size);
  } catch (error) {
    if (!(error instanceof NotListedError)) throw error;
    const built = buildRun(run, straightOnly(run));
    if (built.pulls.some((pull) => pull.parts.bends.length > 0)) throw error;
    return built;
  }
  return buildRun(run, shoe);
}

function straightOnly(run: Run): Shoe {
  const radius = minimumRadius(run.size, "other");
  const outside = outsideDiameter(run.raceway, run.size);
  return {
    ...{ raceway: run.raceway, size: run.size, radius, outsideDiameter: outside, deduct: radius + outside / 2 },
    ...{ springback: 0, dialFrom: 0, dialTo: 90, dialStart: 0, shortestTail: 0, source: "no shoe: straight conduit" },
  };
}

function buildPull(pull: Pull, pullNumber: number, piecesBefore: number, stick: number, shoe: Shoe): BuiltPull {
  const parts = pathParts(pullPath(pull));
  const starts = bendStarts(parts);
  const division = dividePull(parts.developed, stick, joinZones(parts, starts, shoe), shortestPiece(shoe));
  if ("tooLong" in division) {
    const { from, to } = division.tooLong;
    throw new InputError(
      `A stick of ${stick} in. cannot span from ${showInches(from, 2)} to ${showInches(to, 2)} along the conduit: bends stand too ` +
        `close together for a coupling in between. Make a leg longer or use a longer stick.`,
    );
  }
  const ends = [0, ...division.joints, parts.developed];
  const pieces = division.joints.concat(parts.developed).map((to, index): Piece => {
    const from = ends[index] ?? 0;
    return {
      number: piecesBefore + index + 1,
      pull: pullNumber,
      cutLength: to - from,
      bends: pieceBends(pull, parts, starts, from, to),
      coupledBefore: index > 0,
      coupledAfter: index < division.joints.length,
    };
  });
  return { pull, parts, pieces, joints: division.joints };
}

const shortestPiece = (shoe: Shoe): number => 2 * (tailNeeded(shoe) + COUPLING_SEAT);

/** Developed position of each bend's first tangent point. */
function bendStarts(parts: PathParts): number[] {
  let at = 0;
  return parts.bends.map((bend, index) => {
    at += parts.straights[index] ?? 0;
    const start = at;
    at += bend.radius * toRadians(bend.angle);
    return start;
  });
}

/** Stretches of straight conduit far enough from bends and from the ends of the pull for a coupling. */
function joinZones(parts: PathParts, starts: readonly number[], shoe: Shoe): JoinZone[] {
  const clear = tailNeeded(shoe) + COUPLING_SEAT;
  const zones: JoinZone[] = [];
  let from = 0;
  for (let index = 0; index < parts.straights.length; index++) {
    const to = starts[index] ?? parts.developed;
    if (to - clear >= from + clear) zones.push({ from: from + clear, to: to - clear });
    const bend = parts.bends[index];
    if (bend) from = to + bend.radius * toRadians(bend.angle);
  }
  return zones;
}

function pieceBends(pull: Pull, parts: PathParts, starts: readonly number[], from: number, to: number): PieceBend[] {
  return parts.bends.flatMap((bend, place): PieceBend[] => {
    const start = starts[place] ?? 0;
    const corner = pull.corners[place];
    if (!corner || start < from || start >= to) return [];
    return [
      {
        corner,
        angle: bend.angle,
        radius: bend.radius,
        start: start - from,
        plane: bend.rotation,
        legBefore: parts.legs[place] ?? 0,
        place,
      },
    ];
  });
}
