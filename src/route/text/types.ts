/** The words of a route: what its text says (steps), and what the steps come to (pulls of corner points). */
import type { Degrees } from "../../geometry/angle";
import type { Vec3 } from "../../geometry/vector";

export const DIRECTIONS = ["up", "down", "north", "south", "east", "west"] as const;
export type Direction = (typeof DIRECTIONS)[number];

/** How far [in], and which way, an offset moves the run. */
export interface Rise {
  rise: number;
  toward: Direction;
}

/** A leg from corner to corner; with `back`, its length is to the outside of the 90° bends at its ends instead. */
export interface LegStep {
  kind: "leg";
  direction: Direction;
  length: number;
  back?: true;
}

/** One step of the route text. Its number is its place in the list, counted from 1. Lengths [in], angles [°]. */
export type RouteStep =
  | LegStep
  | { kind: "ahead"; length: number }
  | { kind: "to"; point: Vec3 }
  | { kind: "bend"; angle: Degrees; toward: Direction }
  | { kind: "offset"; rises: Rise[]; angle: Degrees }
  | { kind: "box offset"; rise: Rise; angle: Degrees }
  | { kind: "saddle"; height: number; toward: Direction; over: number | null; angle: Degrees }
  | { kind: "sweep"; radius: number; shots: number | null }
  /** The next corner is a factory elbow; without a radius [in], of the one that is standard. */
  | { kind: "elbow"; radius: number | null }
  | { kind: "box" };

export type CornerKind =
  "bend" | "offset" | "rolling offset" | "box offset" | "three-bend saddle" | "four-bend saddle" | "sweep";

/** A factory elbow that the route asks for: its radius [in], or null for the standard one. */
export interface AskedElbow {
  readonly radius: number | null;
  /** Number of the step that asks for it. */
  readonly step: number;
}

/** A bend of a pull: the corner point of its centerline and what the bend belongs to. */
export interface RouteCorner {
  /** Where the two straight legs would meet [in]. */
  point: Vec3;
  /** Centerline radius [in]. */
  radius: number;
  kind: CornerKind;
  /** Number of the step that asks for the bend, counted from 1. */
  step: number;
  /** Bends that are made together (the two of an offset, the shots of a sweep) share a group. Counted from 1 in the route. */
  group: number;
  /** Place of the bend in its group, 1 to `of`. */
  place: number;
  of: number;
  /** Where the route asks for a factory elbow. */
  elbow?: AskedElbow;
}

/** A stretch of conduit between boxes. `points` runs from end to end; `corners` are its inner points, in order. */
export interface Pull {
  points: Vec3[];
  corners: RouteCorner[];
}

/** Finished centerline radius [in] of a bend by its angle, and by the elbow where the route asks for one. */
export type RadiusAt = (angle: Degrees, elbow?: AskedElbow) => number;

export interface ResolvedRoute {
  steps: RouteStep[];
  pulls: Pull[];
  /** True when the last step is a box. */
  endsInBox: boolean;
}
