import { tan, toDegrees, toRadians, type Radians } from "../../geometry/angle";
import { add, along, angleBetween, dot, norm, scale, squareTo, subtract, unit, type Vec3 } from "../../geometry/vector";
import { directionVector } from "../../route/directions";
import { sideToward, turnToward } from "../../route/sideways";
import { DIRECTIONS, type Direction, type RouteStep } from "../../route/text/types";
import { InputError } from "../../units/errors";
import { setback } from "../../geometry/arc";
import type { Corners } from "../fit/fitCorners";
import { groupAt, type Alike, type DrawnLeg, type Group, type Shop } from "./groups";
import { risesToward, sideWord, turnWord } from "./rises";

/** What a pull comes to in words. */
export interface Written {
  readonly steps: readonly RouteStep[];
  /** Radius drawn at each drawn corner [in]; null where the words say it themselves, as a sweep. */
  readonly radii: readonly (number | null)[];
}

/** A box offset is no higher [in] and no steeper [°]: common practice, no source. */
const [BOX_RISE, BOX_ANGLE] = [1, 12.5];
/** Rounding takes no more of a leg than this [in]. */
const GIVEN_BACK = 1 / 32;
/** A leg may end this far beside a line along one of the six directions and still be called by it [in]. */
const BESIDE = 1 / 64;

/**
 * Writes the corners of a pull as steps. What a number loses in rounding the next leg takes up: each is measured from
 * where the words before it lead.
 *
 * @param datum where the run begins, from which `to` counts @param start where this pull does
 * @param rounding of the drawing's coordinates [in]
 */
export function writeSteps(corners: Corners, datum: Vec3, start: Vec3, rounding: number, shop: Shop): Written {
  const legs = legsOf(corners.points);
  const radii: (number | null)[] = [];
  const shortest = Math.min(...legs.map(({ length }) => length));
  const alike: Alike = {
    degrees: Math.min(2, 0.02 + 4 * toDegrees((rounding / shortest) as Radians)),
    inches: 0.01 + 4 * rounding,
  };
  const near = Math.max(0.002, toRadians(alike.degrees));
  const writer = new StepWriter(datum, start, rounding, near);
  const setbackAt = (corner: number): number => {
    const [one, other] = [legs[corner - 1], legs[corner]];
    if (!one || !other) return 0;
    const angle = toDegrees(angleBetween(one.way, other.way));
    return setback(angle, shop.radiusAt(angle));
  };
  /** What the bends on either side of a leg take of it; a saddle and a sweep reach into it, so nothing is known of those. */
  const least = (leg: number, takes: number): number => (takes > 2 ? 0 : setbackAt(leg) + setbackAt(leg + 1));
  for (let leg = 0; leg < legs.length;) {
    if (leg === legs.length - 1) {
      writer.leg(legs[leg]!.way, corners.points.at(-1)!, least(leg, 1));
      break;
    }
    const group = writable(groupAt(legs, corners.radii, leg, alike, shop), legs[leg]!.way, legs[leg + 1]!.from, near);
    writer.leg(legs[leg]!.way, group.legEnd, least(leg, group.takes));
    const own = corners.radii.slice(leg, leg + group.takes);
    leg += group.takes;
    writer.group(group, legs[leg]!);
    radii.push(...own.map((radius) => (group.kind === "sweep" ? null : radius)));
  }
  return { steps: writer.steps, radii };
}

function legsOf(points: readonly Vec3[]): DrawnLeg[] {
  return points.slice(1).map((point, at) => {
    const whole = subtract(point, points[at]!);
    return { from: points[at]!, way: unit(whole), length: norm(whole) };
  });
}

/** A group that has words; an offset or saddle to a side that none of our words points to is plain corners. */
function writable(group: Group, heading: Vec3, corner: Vec3, near: number): Group {
  const plain: Group = { kind: "corner", takes: 1, legEnd: corner };
  if (group.kind === "saddle") return sideWord(heading, group.side, near) ? group : plain;
  if (group.kind === "offset") return risesToward(heading, group.side, group.rise, near) ? group : plain;
  return group;
}

class StepWriter {
  readonly steps: RouteStep[] = [];
  private at: Vec3;
  private heading: Vec3 | undefined;
  /** True after a bend, an offset or a saddle: the run goes on ahead. */
  private ahead = false;

  constructor(
    private readonly datum: Vec3,
    start: Vec3,
    private readonly rounding: number,
    /** Directions this near are one [1]. */
    private readonly near: number,
  ) {
    this.at = start;
  }

  /** @param least what its bends take of it [in]; what rounding took below that is given back */
  leg(way: Vec3, to: Vec3, least: number): void {
    const away = subtract(to, this.at);
    const long = (whole: number): number => {
      const length = this.length(whole);
      return length < least && least - length < GIVEN_BACK + 4 * this.rounding
        ? Math.ceil((least + 3 * this.rounding) * 1e4) / 1e4
        : length;
    };
    if (this.ahead) {
      const length = long(dot(away, this.heading!));
      this.steps.push({ kind: "ahead", length });
      this.at = along(this.at, this.heading!, length);
      this.ahead = false;
      return;
    }
    const word = wordOf(way, norm(away), this.rounding);
    if (word) {
      this.heading = directionVector(word);
      const length = long(dot(away, this.heading));
      this.steps.push({ kind: "leg", direction: word, length });
      this.at = along(this.at, this.heading, length);
    } else {
      const point = subtract(to, this.datum).map((value) => this.length(value)) as unknown as Vec3;
      this.steps.push({ kind: "to", point });
      const end = add(this.datum, point);
      this.heading = unit(subtract(end, this.at));
      this.at = end;
    }
  }

  /** @param next the leg after it */
  group(group: Group, next: DrawnLeg): void {
    const heading = this.heading!;
    if (group.kind === "offset") {
      const found = risesToward(heading, group.side, group.rise, 2 * this.near) ?? this.noWords("offset");
      const rises = found.map(({ rise, toward }) => ({
        rise: this.length(rise),
        toward,
      }));
      const angle = this.angle(group.angle);
      const isBox = rises.length === 1 && rises[0]!.rise <= BOX_RISE && angle <= BOX_ANGLE;
      this.steps.push(isBox ? { kind: "box offset", rise: rises[0]!, angle } : { kind: "offset", rises, angle });
      const whole = rises.reduce<Vec3>(
        (sum, { rise, toward }) => add(sum, scale(sideToward(toward, heading)!, rise)),
        [0, 0, 0],
      );
      this.at = add(along(this.at, heading, norm(whole) / tan(toRadians(angle))), whole);
      this.ahead = true;
    } else if (group.kind === "saddle") {
      const toward = sideWord(heading, group.side, 2 * this.near) ?? this.noWords("saddle");
      const over = group.over === null ? null : this.length(group.over);
      const [height, angle] = [this.length(group.height), this.angle(group.angle)];
      this.steps.push({ kind: "saddle", height, toward, over, angle });
      this.ahead = true;
    } else {
      if (group.kind === "sweep")
        this.steps.push({ kind: "sweep", radius: this.length(group.radius), shots: shotsOf(group, heading, next.way) });
      if (group.kind === "elbow") this.steps.push({ kind: "elbow", radius: group.radius });
      this.turn(heading, next);
    }
  }

  /** A turn that a direction alone tells needs no step; one toward a direction is a bend; the rest is told by a point. */
  private turn(heading: Vec3, { way: after, length }: DrawnLeg): void {
    if (wordOf(after, length, this.rounding)) return;
    const angle = this.angle(toDegrees(angleBetween(heading, after)));
    const toward = turnWord(heading, after, angle, this.near);
    if (!toward) return;
    this.steps.push({ kind: "bend", angle, toward });
    this.heading = turnToward(toward, angle, heading)!;
    this.ahead = true;
  }

  private noWords(what: string): never {
    throw new InputError(`the side of its ${what} at step ${this.steps.length + 1} is none of our directions.`);
  }

  /** A length to a sixteenth where the drawing is that coarse or it is one but for rounding, else to a ten-thousandth. */
  private length(value: number): number {
    const sixteenth = Math.round(value * 16) / 16;
    const near = Math.max(0.002, 2 * this.rounding);
    return (Math.abs(value - sixteenth) <= near ? sixteenth : Number(value.toFixed(4))) + 0;
  }

  /** An angle to half a degree where it is one but for rounding, else to a hundredth. */
  private angle(value: number): number {
    const half = Math.round(value * 2) / 2;
    return Math.abs(value - half) <= Math.min(0.2, 0.01 + 20 * this.rounding) ? half : Number(value.toFixed(2));
  }
}

/** The word for a leg's direction, where it ends no farther beside it than can be told. */
function wordOf(way: Vec3, length: number, rounding: number): Direction | undefined {
  const word = DIRECTIONS.find((own) => dot(directionVector(own), way) > 0.99);
  if (!word) return undefined;
  const slanted = norm(squareTo(way, directionVector(word)));
  return slanted < 1e-5 || slanted * length <= BESIDE + 3 * rounding ? word : undefined;
}

/** Left out where it is what the words come to by themselves: shots of at most 10°. */
function shotsOf({ shots }: { readonly shots: number | null }, heading: Vec3, after: Vec3): number | null {
  const turn = toDegrees(angleBetween(heading, after));
  return shots === Math.max(2, Math.ceil(turn / 10 - 0.01)) ? null : shots;
}
