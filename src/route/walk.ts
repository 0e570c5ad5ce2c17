import { SAME_DIRECTION, SAME_PLACE } from "../units/tolerances";
import { isAngle, tan, toDegrees, toRadians, type Degrees } from "../geometry/angle";
import { along, angleBetween, norm, ORIGIN, subtract, unit, type Vec3 } from "../geometry/vector";
import { show, showInches } from "../units/show";
import type { Course, Joint, OffsetJoint, Sweep } from "./courses";
import { directionVector, directionWord } from "./directions";
import { offsetSide, sideToward, turnToward } from "./sideways";
import { wordsOf } from "./text/ownWords";
import { RouteError, stepError } from "./text/routeError";
import type { AskedElbow, Body, PullEnd, Rise, RouteStep } from "./text/types";

const courseFrom = (start: Vec3): Course => ({ start, stretches: [], joints: [], end: "open", fittings: [] });

const NO_TURN = toRadians(0);
/** Least turn that counts as a bend [°]: less cannot be read on a dial. As much is kept from 180°. */
const LEAST_TURN = 0.05;

/**
 * Walks the steps from the datum and gathers the stretches between boxes. It stands at the start of a course, at the
 * end of a stretch, or at a joint (a bend, offset or saddle) that waits for the stretch after it.
 */
export class Walk {
  private readonly courses: Course[] = [];
  private course: Course = courseFrom(ORIGIN);
  /** The body that the next leg comes out of, and where the leg before it went. */
  private body: { readonly body: Body; readonly step: number; readonly heading: Vec3 } | null = null;
  private position = ORIGIN;
  private heading: Vec3 | undefined;
  private sweep: Sweep | null = null;
  private elbow: AskedElbow | null = null;
  private number = 0;
  /** The step being taken; null after the last. */
  private step: RouteStep | null = null;

  take(step: RouteStep): void {
    this.number += 1;
    this.step = step;
    switch (step.kind) {
      case "leg":
        return this.go(directionVector(step.direction), step.length);
      case "ahead":
        if (!this.heading) throw this.expected("a leg with a direction first, as in up 24");
        return this.go(this.heading, step.length);
      case "to":
        return this.goTo(step.point);
      case "bend":
        return this.bend(step.angle, turnToward(step.toward, step.angle, this.headingOfLeg()));
      case "offset":
        return this.offset(step.rises.length > 1 ? "rolling offset" : "offset", step.rises, step.angle);
      case "box offset":
        return this.offset("box offset", [step.rise], step.angle);
      case "saddle": {
        const side = sideToward(step.toward, this.headingOfLeg()) ?? this.refuseSide();
        this.needNoneAsked();
        const { height: rise, angle, over } = step;
        return void this.course.joints.push({ type: "saddle", step: this.number, side, rise, angle, over });
      }
      case "sweep":
        this.needNoneAsked();
        this.sweep = { radius: step.radius, shots: step.shots, step: this.number };
        return;
      case "elbow":
        this.needNoneAsked();
        this.elbow = { radius: step.radius, step: this.number };
        return;
      case "box": {
        const last = this.course.stretches.length === 0 ? this.courses.at(-1) : undefined;
        if (!last?.whip || last.whip.toBox) return this.closeCourse("box");
        last.whip = { ...last.whip, toBox: true };
        return;
      }
      case "body": {
        const heading = this.headingOfLeg();
        this.closeCourse(step.body);
        this.body = { body: step.body, step: this.number, heading };
        return;
      }
      case "joint": {
        this.headingOfLeg();
        this.needNoneAsked();
        const { stretches, fittings } = this.course;
        const at = stretches.at(-1)!.length;
        fittings.push({ stretch: stretches.length - 1, at, fitting: step.fitting, step: this.number });
        return;
      }
      case "whip":
        return this.whip(step);
    }
  }

  /** The courses walked. Called once, after the last step. A run may end in a box: no course follows it. */
  finish(): Course[] {
    this.step = null;
    const isClosed = this.courses.length > 0 && this.course.stretches.length === 0;
    if (isClosed) this.needNoneAsked();
    else this.closeCourse("open");
    return this.courses;
  }

  private go(direction: Vec3, length: number): void {
    const { stretches } = this.course;
    if (stretches.length === 0) this.outOfBody(direction);
    const last = stretches.at(-1);
    const turn = last ? angleBetween(this.heading!, direction) : NO_TURN;
    if (last && turn < SAME_DIRECTION) direction = this.heading!;
    if (last && !this.waits() && turn < SAME_DIRECTION) {
      last.length += length;
    } else {
      if (this.waits() && turn >= SAME_DIRECTION)
        throw this.expected(`the run to go on ${this.way()} here, as in ahead 24`);
      if (last && !this.waits()) this.corner(toDegrees(turn));
      stretches.push({ direction, length, step: this.number });
    }
    this.heading = direction;
    this.position = along(this.position, direction, length);
  }

  private goTo(point: Vec3): void {
    const way = subtract(point, this.position);
    if (norm(way) < SAME_PLACE) throw this.expected("a point away from where the run already is");
    this.go(unit(way), norm(way));
  }

  private bend(angle: Degrees, heading: Vec3 | undefined): void {
    this.heading = heading ?? this.refuseSide();
    this.corner(angle);
  }

  private offset(kind: OffsetJoint["kind"], rises: readonly Rise[], angle: Degrees): void {
    const heading = this.headingOfLeg();
    this.needNoneAsked();
    const moved = offsetSide(rises, heading) ?? this.refuseRises(rises.length);
    this.course.joints.push({ type: "offset", step: this.number, kind, angle, ...moved });
    this.position = along(this.position, heading, moved.rise / tan(toRadians(angle)));
    this.position = along(this.position, moved.side, moved.rise);
  }

  private corner(turn: number): void {
    if (turn < LEAST_TURN) {
      throw this.expected(`a turn of at least ${LEAST_TURN}°, not ${show(turn, 6)}°; leave out a point, or move it`);
    }
    if (turn > 180 - LEAST_TURN) throw this.expected("a turn below 180°; this runs straight back over the leg before");
    const { sweep, elbow } = this;
    this.course.joints.push({
      ...{ type: "corner", step: this.number, sweep },
      ...(elbow && { elbow }),
    });
    [this.sweep, this.elbow] = [null, null];
  }

  private closeCourse(end: PullEnd): void {
    this.headingOfLeg();
    this.needNoneAsked();
    this.course.end = end;
    this.courses.push(this.course);
    this.course = courseFrom(this.position);
  }

  /** A conduit body turns a run by 90°, or lets it go straight on. */
  private outOfBody(direction: Vec3): void {
    if (!this.body) return;
    const { body, step, heading } = this.body;
    this.body = null;
    const turn = toDegrees(angleBetween(heading, direction));
    const straight = turn < LEAST_TURN;
    const square = isAngle(turn, 90);
    const takes = { C: straight, T: straight || square, X: straight || square, LB: square, LL: square, LR: square }[
      body
    ];
    if (takes) return;
    const way = { C: "straight on", T: "straight on or by 90°", X: "straight on or by 90°" }[body as "C"] ?? "by 90°";
    throw this.expected(`the run to go on ${way} from the ${body} of step ${step}, not turned by ${show(turn, 4)}°`);
  }

  /** Ends the pull, unless a box ended it, and stands at the far end of the flexible piece. */
  private whip({ flex, length, moves, point }: RouteStep & { kind: "whip" }): void {
    if (this.course.stretches.length > 0) this.closeCourse("whip");
    const last = this.courses.at(-1);
    if (!last || last.whip || this.body) this.headingOfLeg();
    const from = this.position;
    const to = point ?? moves.reduce((at, { rise, toward }) => along(at, directionVector(toward), rise), from);
    const apart = norm(subtract(to, from));
    if (apart < SAME_PLACE) throw this.expected("the flexible piece to go somewhere");
    if (length < apart - SAME_PLACE) {
      throw this.expected(`a length of at least ${showInches(apart)}: so far away is where it goes`);
    }
    last!.whip = { flex, length, from, to, step: this.number, toBox: false };
    this.position = to;
    this.heading = undefined;
    this.course = courseFrom(to);
  }

  /** True at a joint: the stretch after it is still to come. */
  private waits(): boolean {
    return this.course.joints.length > 0 && this.course.joints.length === this.course.stretches.length;
  }

  /** The heading at the end of a stretch; everywhere else the step lacks a leg before it. */
  private headingOfLeg(): Vec3 {
    const before: Joint | undefined = this.waits() ? this.course.joints.at(-1) : undefined;
    if (before) throw this.expected(`a leg first after step ${before.step}, as in ahead 24`);
    if (!this.heading || this.course.stretches.length === 0) {
      const after = this.body ? `the ${this.body.body}` : this.courses.at(-1)?.whip ? "the flexible piece" : "the box";
      throw this.expected(`a leg first after ${this.courses.length > 0 ? after : "the start"}, as in up 24`);
    }
    return this.heading;
  }

  private needNoneAsked(): void {
    const asked = this.sweep ?? this.elbow;
    if (!asked) return;
    const what = this.sweep ? "sweep" : "elbow";
    throw this.expected(`a change of direction first, for the ${what} of step ${asked.step}`);
  }

  private refuseSide(): never {
    throw this.expected(`a direction to the side of the run, which goes ${this.way()}`);
  }

  private refuseRises(count: number): never {
    if (count === 1) this.refuseSide();
    throw this.expected(`two directions square to each other and to the run, which goes ${this.way()}`);
  }

  private way(): string {
    const slant = this.heading!.map((value) => show(value)).join(" ");
    return directionWord(this.heading!) ?? `along ${slant} (east north up)`;
  }

  private expected(what: string): RouteError {
    if (!this.step) {
      const words = `the route ends with step ${this.number}; expected ${what}.`;
      return new RouteError(this.number, words, words);
    }
    return stepError(this.number, wordsOf(this.step), what);
  }
}
