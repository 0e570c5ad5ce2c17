/** What the steps say, before bends take their room: straight stretches, and what joins one stretch to the next. */
import type { Degrees } from "../geometry/angle";
import type { Vec3 } from "../geometry/vector";
import type { AskedElbow, JointFitting, PullEnd, Whip } from "./text/types";

export interface Stretch {
  direction: Vec3;
  /** From joint to joint [in]: to an obstacle's center, to the true corner of a sweep. */
  length: number;
  /** Step that begins it, counted from 1. */
  step: number;
}

export interface Sweep {
  radius: number;
  /** 1 for a curve that is laid by hand, which no text asks for; null where the text says nothing. */
  shots: number | null;
  step: number;
}

export interface CornerJoint {
  type: "corner";
  step: number;
  sweep: Sweep | null;
  /** Where a factory elbow is asked for. */
  elbow?: AskedElbow;
}

/** What an offset and a saddle have in common: `rise` [in] toward the unit vector `side` (square to the run) at `angle` [°]. */
interface Slanted {
  step: number;
  side: Vec3;
  rise: number;
  angle: Degrees;
}

export interface OffsetJoint extends Slanted {
  type: "offset";
  kind: "offset" | "rolling offset" | "box offset";
}

export interface SaddleJoint extends Slanted {
  type: "saddle";
  /** Width of the obstacle [in]: four bends; null: three. */
  over: number | null;
}

export type Joint = CornerJoint | OffsetJoint | SaddleJoint;

/** A run between boxes: stretch, joint, stretch, … stretch. */
export interface Course {
  start: Vec3;
  stretches: Stretch[];
  joints: Joint[];
  end: PullEnd;
  /** Fittings on a stretch: how far from where it begins [in]. */
  fittings: { stretch: number; at: number; fitting: JointFitting; step: number }[];
  whip?: Whip;
}
