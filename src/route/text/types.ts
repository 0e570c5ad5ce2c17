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
  | { kind: "box" }
  /** A conduit body, where a run turns or goes on. */
  | { kind: "body"; body: Body }
  /** A fitting between two conduits, where the run stands. */
  | { kind: "joint"; fitting: JointFitting }
  /** A flexible piece from where the run stands: so far each way, or to a point of the datum [in]. */
  | { kind: "whip"; flex: Whip["flex"]; length: number; moves: Rise[]; point: Vec3 | null };

/** The trade's letters for conduit bodies. */
export const BODIES = ["LB", "LL", "LR", "T", "C", "X"] as const;
export type Body = (typeof BODIES)[number];

export type JointFitting = "union" | "coupling" | "expansion";

/** A flexible piece that goes on where a pull ends. Lengths and points [in]. */
export interface Whip {
  readonly flex: "FMC" | "LFMC";
  readonly length: number;
  readonly from: Vec3;
  readonly to: Vec3;
  readonly step: number;
  /** True when a box follows it. */
  readonly toBox: boolean;
}

/** What a pull ends at: a box, a conduit body, a flexible piece; "open" at the end of the run. */
export type PullEnd = "box" | Body | "whip" | "open";

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
  end: PullEnd;
  /** Fittings between two conduits, where the route has them. */
  joints: readonly { readonly point: Vec3; readonly fitting: JointFitting; readonly step: number }[];
  /** What goes on from its end, or from the box there. */
  whip?: Whip;
}

/** Finished centerline radius [in] of a bend by its angle, and by the elbow where the route asks for one. */
export type RadiusAt = (angle: Degrees, elbow?: AskedElbow) => number;

export interface ResolvedRoute {
  steps: RouteStep[];
  pulls: Pull[];
  /** True when the last step is a box. */
  endsInBox: boolean;
}
