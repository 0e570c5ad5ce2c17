import type { Degrees } from "../../geometry/angle";
import type { LineUpSymbol } from "../paper/symbols";
import { pathParts, type Path } from "../../geometry/path";
import { setback } from "../../geometry/arc";
import { along, subtract, unit, type Vec3 } from "../../geometry/vector";
import { refuseShortLegs } from "../../route/problems";
import { resolveRoute } from "../../route/resolveRoute";
import type { RouteStep } from "../../route/text/types";

/** A kind of bend with the dimensions a person gives for it. Lengths [in], angles [°]. */
export type BendShape =
  | { kind: "stub-up"; stub: number }
  | { kind: "back-to-back"; distance: number; stub: number }
  | { kind: "kick"; length: number; angle: Degrees }
  | { kind: "offset"; rise: number; angle: Degrees }
  | { kind: "box offset"; rise: number; angle: Degrees }
  | { kind: "rolling offset"; rise: number; roll: number; angle: Degrees }
  | { kind: "three-bend saddle"; height: number; angle: Degrees }
  | { kind: "four-bend saddle"; height: number; over: number; angle: Degrees }
  | { kind: "sweep"; radius: number; shots: number; angle: Degrees };

export type BendKindName = BendShape["kind"];

/** The conduit a shape is bent in [in]. */
export interface BendConduit {
  readonly radius: number;
  readonly outsideDiameter: number;
}

/** Long enough that no bend reaches the end of a leg; the ends are cut to length afterward [in]. */
const LONG = 1e4;

const leg = (direction: "up" | "east", length: number): RouteStep => ({ kind: "leg", direction, length });

/** What the shape is in words of a route, so that the drawing means what the route means. */
function stepsOf(shape: BendShape, { outsideDiameter }: BendConduit): RouteStep[] {
  const straightOn = (step: RouteStep): RouteStep[] => [leg("east", LONG), step, leg("east", LONG)];
  switch (shape.kind) {
    case "stub-up":
      return [{ kind: "leg", direction: "down", length: shape.stub - outsideDiameter / 2 }, leg("east", LONG)];
    case "back-to-back": {
      const stub = shape.stub - outsideDiameter / 2;
      return [
        { kind: "leg", direction: "down", length: stub },
        leg("east", shape.distance - outsideDiameter),
        leg("up", stub),
      ];
    }
    case "kick":
      return [
        leg("east", LONG),
        { kind: "bend", angle: shape.angle, toward: "up" },
        { kind: "ahead", length: shape.length },
      ];
    case "offset":
      return straightOn({ kind: "offset", rises: [{ rise: shape.rise, toward: "up" }], angle: shape.angle });
    case "box offset":
      return straightOn({ kind: "box offset", rise: { rise: shape.rise, toward: "up" }, angle: shape.angle });
    case "rolling offset": {
      const rises = [
        { rise: shape.rise, toward: "up" as const },
        { rise: shape.roll, toward: "north" as const },
      ];
      return straightOn({ kind: "offset", rises, angle: shape.angle });
    }
    case "three-bend saddle":
      return straightOn({ kind: "saddle", height: shape.height, toward: "up", over: null, angle: shape.angle });
    case "four-bend saddle":
      return straightOn({ kind: "saddle", height: shape.height, toward: "up", over: shape.over, angle: shape.angle });
    case "sweep":
      return [
        leg("east", LONG),
        { kind: "sweep", radius: shape.radius, shots: shape.shots },
        { kind: "bend", angle: shape.angle, toward: "up" },
        { kind: "ahead", length: LONG },
      ];
  }
}

/** Ends that the shape itself does not give: straight conduit left before the first bend and after the last [in]. */
export interface Tails {
  readonly before: number;
  readonly after: number;
}

const GIVEN_START: readonly BendKindName[] = ["stub-up", "back-to-back"];
const GIVEN_END: readonly BendKindName[] = ["back-to-back", "kick"];

/** True for an end whose length the shape gives; the others are drawn broken off. */
export const endsGiven = (kind: BendKindName): { start: boolean; end: boolean } => ({
  start: GIVEN_START.includes(kind),
  end: GIVEN_END.includes(kind),
});

/**
 * Corner points of a shape, in a frame with x right, y away and z up.
 *
 * @throws InputError where the shape cannot be made: the messages of the route
 */
export function bendPath(shape: BendShape, conduit: BendConduit, tails: Tails): Path {
  const pull = resolveRoute(stepsOf(shape, conduit), conduit.radius).pulls[0]!;
  refuseShortLegs([pull]);
  const radii = pull.corners.map(({ radius }) => radius);
  const points = [...pull.points];
  const given = endsGiven(shape.kind);
  const { bends } = pathParts({ points, radii });
  if (!given.start) points[0] = tail(points[1]!, points[0]!, bends[0]!, tails.before);
  if (!given.end) points[points.length - 1] = tail(points.at(-2)!, points.at(-1)!, bends.at(-1)!, tails.after);
  return { points, radii };
}

const tail = (corner: Vec3, end: Vec3, bend: { angle: Degrees; radius: number }, length: number): Vec3 =>
  along(corner, unit(subtract(end, corner)), setback(bend.angle, bend.radius) + length);

/** A pencil mark on the bent conduit. */
export interface BendMark {
  /** From the datum end along the straight conduit [in]. */
  readonly distance: number;
  readonly lineUp: LineUpSymbol;
  /** Its number; its place in the list, 1 for the first, when left out. */
  readonly number?: number;
  /** Where the conduit is of several pieces: which, and the distance from that one's datum end [in]. */
  readonly piece?: { readonly number: number; readonly distance: number };
}

export interface BendDrawing extends BendConduit {
  readonly shape: BendShape;
  readonly marks?: readonly BendMark[];
  /** Where the first bend starts on the straight stick [in]; needed with marks. */
  readonly firstStart?: number;
}
