/** Corners that belong together: what the trade makes of them, each with its place on the legs before and after. */
import { tan, times, toDegrees, type Degrees } from "../../geometry/angle";
import { cornerHeight, setback } from "../../geometry/arc";
import {
  along,
  angleBetween,
  cross,
  dot,
  norm,
  rotate,
  squareTo,
  subtract,
  unit,
  type Vec3,
} from "../../geometry/vector";
import type { RadiusAt } from "../../route/text/types";
import { meeting } from "../fit/arcs";

/** A leg of the drawn centerline, from corner to corner. */
export interface DrawnLeg {
  readonly from: Vec3;
  readonly way: Vec3;
  readonly length: number;
}

/** What the shop bends with, and the angles its elbows are bought in [°]. */
export interface Shop {
  readonly radiusAt: RadiusAt;
  readonly elbowAngles: readonly Degrees[];
}

interface Common {
  /** Corners it takes. */
  readonly takes: number;
  /** Where the leg before it ends. */
  readonly legEnd: Vec3;
}

export type Group = Common &
  (
    | { readonly kind: "corner" }
    | { readonly kind: "elbow"; readonly radius: number }
    | { readonly kind: "offset"; readonly side: Vec3; readonly rise: number; readonly angle: Degrees }
    | {
        readonly kind: "saddle";
        readonly side: Vec3;
        readonly height: number;
        readonly over: number | null;
        readonly angle: Degrees;
      }
    | { readonly kind: "sweep"; readonly radius: number; readonly shots: number | null }
  );

/** What is alike in a drawing: angles [°] and lengths [in] this near. */
export interface Alike {
  readonly degrees: number;
  readonly inches: number;
}

/** An offset turns no more than this [°]: from there on it is two bends. */
const STEEPEST_OFFSET = 60.5;
/** A higher offset [in] is two bends with a leg between. */
const HIGHEST_OFFSET = 30;
/** A wider obstacle than this [in] has two offsets beside it, no saddle over it. */
const WIDEST_SADDLE = 48;
/** Shots of a sweep turn about one axis, but for what rounding does to small turns [rad]. */
const SHOT_PLANE = 0.5;
/** Most turn of one shot of a sweep, as its sine: 20°. */
const SHOT_SINE = 0.342;
/** A bend this many times as wide as the shoe's is made in shots, or bought. */
const SWEPT = 2;

/**
 * What the corners from `first` on are.
 * @param legs all legs; corner n stands between leg n and leg n + 1
 * @param radii drawn at each corner [in]
 */
export function groupAt(
  legs: readonly DrawnLeg[],
  radii: readonly number[],
  first: number,
  alike: Alike,
  shop: Shop,
): Group {
  const { radiusAt } = shop;
  const [before, second, third, fourth, fifth] = legs.slice(first, first + 5);
  const turn = (one: DrawnLeg, other: DrawnLeg) => toDegrees(angleBetween(one.way, other.way));
  const same = (a: number, b: number) => Math.abs(a - b) <= alike.degrees;
  const legEnd = second!.from;
  const angle = turn(before!, second!);
  const corner: Group = { kind: "corner", takes: 1, legEnd };
  const side = (up: DrawnLeg): Vec3 => unit(squareTo(up.way, before!.way));
  const rise = (point: Vec3): number => norm(squareTo(subtract(point, legEnd), before!.way));
  const returns = (leg: DrawnLeg) => turn(before!, leg) <= alike.degrees;
  if (third && angle <= STEEPEST_OFFSET) {
    const [turn2, turn3, turn4] = [
      turn(second!, third),
      fourth && turn(third, fourth),
      fourth && fifth && turn(fourth, fifth),
    ];
    if (
      fourth &&
      fifth &&
      [turn2, turn3!, turn4!].every((own) => same(own, angle)) &&
      returns(third) &&
      returns(fifth)
    ) {
      const over = third.length - 2 * setback(angle, radiusAt(angle));
      const flatTop = rise(fifth.from) <= alike.inches && over > 0 && over <= WIDEST_SADDLE;
      if (flatTop && dot(fourth.way, side(second!)) < 0) {
        const foot = along(legEnd, before!.way, dot(subtract(third.from, legEnd), before!.way) + third.length / 2);
        return { kind: "saddle", takes: 4, legEnd: foot, side: side(second!), height: rise(third.from), over, angle };
      }
    }
    if (
      fourth &&
      same(turn3!, angle) &&
      same(turn2, 2 * angle) &&
      returns(fourth) &&
      rise(fourth.from) <= alike.inches
    ) {
      const top = rise(third.from) - cornerHeight(2 * angle, radiusAt(2 * angle));
      const foot = along(legEnd, before!.way, dot(subtract(third.from, legEnd), before!.way));
      const isEven = Math.abs(second!.length - third.length) <= 2 * alike.inches;
      if (top > 0 && isEven)
        return { kind: "saddle", takes: 3, legEnd: foot, side: side(second!), height: top, over: null, angle: turn2 };
    }
    if (same(turn2, angle) && returns(third) && rise(third.from) <= HIGHEST_OFFSET) {
      return { kind: "offset", takes: 2, legEnd, side: side(second!), rise: rise(third.from), angle };
    }
  }
  return sweepAt(legs, first, alike) ?? wideAt(corner, radii[first]!, angle, shop);
}

/** One smooth arc much wider than the shoe bends: an elbow where one is made in that angle and whole inches, else a sweep. */
function wideAt(corner: Group, radius: number, angle: Degrees, { radiusAt, elbowAngles }: Shop): Group {
  if (radius < SWEPT * radiusAt(angle)) return corner;
  const whole = Math.round(radius);
  const isElbow = elbowAngles.some((own) => Math.abs(own - angle) < 0.1) && Math.abs(radius - whole) <= 1 / 32;
  return isElbow ? { ...corner, kind: "elbow", radius: whole } : { ...corner, kind: "sweep", radius, shots: null };
}

/** Most that a corner of a sweep may stand off where equal shots would have it [in], besides what the drawing rounds. */
const SHOT_OFF = 1 / 16;

/** The longest row of three corners or more that turn alike and stand where the shots of a sweep would. */
function sweepAt(legs: readonly DrawnLeg[], first: number, alike: Alike): Group | undefined {
  const normals = legs.slice(1).map((leg, at) => cross(legs[at]!.way, leg.way));
  const goesOn = (at: number): boolean => {
    const [one, own] = [normals[first]!, normals[at]];
    return own !== undefined && norm(own) < SHOT_SINE && angleBetween(one, own) < SHOT_PLANE;
  };
  let most = 0;
  while (goesOn(first + most)) most += 1;
  for (let shots = most; shots >= 3; shots -= 1) {
    const [before, after] = [legs[first]!, legs[first + shots]!];
    const met = meeting({ at: before.from, way: before.way }, { at: after.from, way: after.way });
    if (!met) continue;
    const turn = angleBetween(before.way, after.way);
    const [whole, half] = [tan(times(turn, 0.5)), tan(times(turn, 0.5 / shots))];
    const setbacks = whole - half;
    const radius = (norm(subtract(met.at, legs[first + 1]!.from)) + norm(subtract(met.at, after.from))) / 2 / setbacks;
    const axis = unit(cross(before.way, after.way));
    let at = along(met.at, before.way, -radius * setbacks);
    const stands = Array.from({ length: shots }, (_, shot) => {
      const off = norm(subtract(at, legs[first + 1 + shot]!.from));
      at = along(at, rotate(before.way, axis, times(turn, (shot + 1) / shots)), 2 * radius * half);
      return off;
    });
    if (Math.max(...stands) <= SHOT_OFF + alike.inches)
      return { kind: "sweep", takes: shots, legEnd: met.at, radius, shots };
  }
  return undefined;
}
