import { asin, cos, sin, toRadians } from "../../geometry/angle";
import { dot, EAST, NORTH, UP, type Vec3 } from "../../geometry/vector";
import type { Flat } from "../paper/fit";

/**
 * How a run is looked at. `azimuth` [°] is the compass direction one looks in (0 north, 90 east), `elevation` [°] how
 * far one looks down (0 level, 90 straight down).
 */
export type RunView = "plan" | "elevation" | "isometric" | { readonly azimuth: number; readonly elevation: number };

/** Three axes equally foreshortened: looking down by the angle whose sine is 1/√3. */
const ISOMETRIC = { azimuth: -45, elevation: (asin(1 / Math.sqrt(3)) * 180) / Math.PI };

export interface Projection {
  readonly azimuth: number;
  readonly elevation: number;
  /** A point in the plane of the picture [in]. */
  flat(point: Vec3): Flat;
  /** How far away a point lies; the farther is drawn first. */
  depth(point: Vec3): number;
}

/** Looks at the shop from far away, in parallel, so that lengths in the plane of the picture stay true. */
export function projection(view: RunView): Projection {
  const { azimuth, elevation } = anglesOf(view);
  const [turn, tilt] = [toRadians(azimuth), toRadians(elevation)];
  const right: Vec3 = [cos(turn), -sin(turn), 0];
  const level: Vec3 = [sin(turn), cos(turn), 0];
  const up: Vec3 = [level[0] * sin(tilt), level[1] * sin(tilt), cos(tilt)];
  const away: Vec3 = [level[0] * cos(tilt), level[1] * cos(tilt), -sin(tilt)];
  return {
    azimuth,
    elevation,
    flat: (point) => [dot(point, right), dot(point, up)],
    depth: (point) => dot(point, away),
  };
}

function anglesOf(view: RunView): { azimuth: number; elevation: number } {
  if (view === "plan") return { azimuth: 0, elevation: 90 };
  if (view === "elevation") return { azimuth: 0, elevation: 0 };
  return view === "isometric" ? ISOMETRIC : view;
}

/** What north, east and up are called on a drawing. */
export type AxisNames = readonly [north: string, east: string, up: string];

export const BUILDING_AXES: AxisNames = ["N", "E", "Up"];

/** Directions in the order of their names. */
export const AXES: readonly Vec3[] = [NORTH, EAST, UP];

const COMPASS = ["north", "northeast", "east", "southeast", "south", "southwest", "west", "northwest"] as const;

/** The view in words. */
export function viewWords(view: RunView): string {
  if (view === "plan") return "plan, seen from above";
  if (view === "isometric") return "isometric, from the southeast";
  const { azimuth, elevation } = anglesOf(view);
  const turn = ((Math.round(azimuth) % 360) + 360) % 360;
  const looking = turn % 45 === 0 ? COMPASS[turn / 45]! : `${turn}° from north`;
  if (elevation === 0) return `elevation, looking ${looking}`;
  const tilt = Math.round(Math.abs(elevation));
  return `looking ${looking}, ${tilt}° ${elevation > 0 ? "down" : "up"}`;
}
