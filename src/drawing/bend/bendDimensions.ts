import { atan2, cos, sin, toDegrees, toRadians } from "../../geometry/angle";
import type { Path } from "../../geometry/path";
import { setback } from "../../geometry/arc";
import { showDegrees } from "../../units/show";
import type { BendConduit, BendShape } from "./bendShapes";
import type { Flat } from "../paper/fit";
import { sentence } from "../paper/words";

/** Inches in the reader's own units, with the unit. */
export type ShowLength = (inches: number) => string;

/** Side of the drawing that a dimension stands on; "beside" the conduit itself, or straight "between"
 * two points. */
export type Lane = "left" | "right" | "above" | "below" | "beside" | "between";

export interface BendDimension {
  readonly from: Flat;
  readonly to: Flat;
  readonly lane: Lane;
  readonly text: string;
}

/** What stands on the drawing of a bend besides the conduit, in the plane of the view. */
export interface BendNotes {
  readonly dimensions: readonly BendDimension[];
  /** Corners (1 for the first) whose angle is shown, with its text. */
  readonly angles: readonly { corner: number; text: string }[];
  /** What the conduit is bent for: outlines. */
  readonly things: readonly (readonly Flat[])[];
  /** Lines of the surfaces it runs on. */
  readonly surfaces: readonly (readonly [Flat, Flat])[];
  /** The shape in words. */
  readonly words: string;
  /** What the drawing cannot show by itself. */
  readonly caption?: string;
}

/** Notes on the side view of a shape, from its corner points (x right, z up). */
export function bendNotes(shape: BendShape, path: Path, conduit: BendConduit, show: ShowLength): BendNotes {
  const flat = path.points.map(([x, , z]): Flat => [x, z]);
  const [first, second, last] = [flat[0]!, flat[1]!, flat.at(-1)!];
  const half = conduit.outsideDiameter / 2;
  const notes = (words: string, more: Partial<BendNotes>): BendNotes => {
    return { dimensions: [], angles: [], things: [], surfaces: [], words, ...more };
  };
  const rise = (text: string, height: number): BendDimension => {
    return { from: second, to: [last[0], second[1] + height], lane: "right", text };
  };
  const angle = showDegrees(shape.kind === "stub-up" || shape.kind === "back-to-back" ? 90 : shape.angle);
  switch (shape.kind) {
    case "stub-up": {
      const dimensions: BendDimension[] = [
        { from: first, to: [second[0], second[1] - half], lane: "left", text: show(shape.stub) },
      ];
      return notes(`The stub is ${show(shape.stub)} from its end to the back of the bend.`, { dimensions });
    }
    case "back-to-back": {
      const third = flat[2]!;
      const dimensions: BendDimension[] = [
        {
          from: [second[0] - half, second[1]],
          to: [third[0] + half, third[1]],
          lane: "below",
          text: show(shape.distance),
        },
        { from: first, to: [second[0], second[1] - half], lane: "left", text: show(shape.stub) },
      ];
      const words = sentence(
        `The backs of the two bends are ${show(shape.distance)} apart; each stub is ${show(shape.stub)}`,
      );
      return notes(words, { dimensions });
    }
    case "kick": {
      const height = shape.length * sin(toRadians(shape.angle));
      const dimensions: BendDimension[] = [
        rise(show(height), height),
        { from: second, to: last, lane: "beside", text: show(shape.length) },
      ];
      const words = sentence(`${show(shape.length)} of conduit kicked ${angle} rise ${show(height)}`);
      return notes(words, { dimensions, angles: [{ corner: 1, text: angle }] });
    }
    case "offset":
      return notes(`The rise is ${show(shape.rise)} with bends of ${angle}.`, {
        dimensions: [rise(show(shape.rise), shape.rise)],
        angles: [{ corner: 1, text: angle }],
      });
    case "rolling offset": {
      const lean = showDegrees(toDegrees(atan2(shape.roll, shape.rise)));
      const caption = `True offset ${show(Math.hypot(shape.rise, shape.roll))} with bends of ${angle}, leaning ${lean} from upright.`;
      return notes(`${sentence(`The rise is ${show(shape.rise)} and the roll ${show(shape.roll)}`)} ${caption}`, {
        dimensions: [rise(show(shape.rise), shape.rise)],
        caption,
      });
    }
    case "box offset":
      return notes(`The rise into the box is ${show(shape.rise)} with bends of ${angle}.`, {
        dimensions: [rise(show(shape.rise), shape.rise)],
        angles: [{ corner: 1, text: angle }],
        things: [boxAt(last, conduit, shape.rise)],
        surfaces: [
          [
            [first[0], -half],
            [last[0], -half],
          ],
        ],
      });
    case "three-bend saddle": {
      const [center, base] = [flat[2]![0], -half];
      const outer = showDegrees(shape.angle / 2);
      return notes(
        `The crest clears an obstacle ${show(shape.height)} high; the middle bend is ${angle}, the outer ones ${outer}.`,
        {
          dimensions: [
            { from: [last[0], base], to: [center, base + shape.height], lane: "right", text: show(shape.height) },
          ],
          angles: [
            { corner: 1, text: outer },
            { corner: 2, text: angle },
          ],
          things: [roundObstacle(center, base, shape.height, conduit.radius / 2)],
          surfaces: [
            [
              [first[0], base],
              [last[0], base],
            ],
          ],
        },
      );
    }
    case "four-bend saddle": {
      const inner = setback(shape.angle, conduit.radius);
      const [near, far, base] = [flat[2]![0] + inner, flat[3]![0] - inner, -half];
      return notes(
        `The saddle clears an obstacle ${show(shape.height)} high, level for ${show(shape.over)}, with bends of ${angle}.`,
        {
          dimensions: [
            { from: [last[0], base], to: [far, base + shape.height], lane: "right", text: show(shape.height) },
            {
              from: [near, shape.height + half],
              to: [far, shape.height + half],
              lane: "above",
              text: show(shape.over),
            },
          ],
          angles: [{ corner: 1, text: angle }],
          things: [rectangle(near, far, base, base + shape.height)],
          surfaces: [
            [
              [first[0], base],
              [last[0], base],
            ],
          ],
        },
      );
    }
    case "sweep": {
      const center: Flat = [second[0] - setback(shape.angle / shape.shots, shape.radius), second[1] + shape.radius];
      const turn = toRadians(shape.angle / 2);
      const middle: Flat = [center[0] + shape.radius * sin(turn), center[1] - shape.radius * cos(turn)];
      const caption = `${angle} in ${shape.shots} shots of ${showDegrees(shape.angle / shape.shots)}.`;
      return notes(`A sweep on a radius of ${show(shape.radius)}: ${caption}`, {
        dimensions: [{ from: center, to: middle, lane: "between", text: show(shape.radius) }],
        caption,
      });
    }
  }
}

const rectangle = (left: number, right: number, low: number, high: number): Flat[] => [
  [left, low],
  [left, high],
  [right, high],
  [right, low],
];

/** A box that the conduit's end enters, standing on the surface. */
const boxAt = ([x, z]: Flat, { outsideDiameter }: BendConduit, rise: number): Flat[] => {
  const base = z - rise - outsideDiameter / 2;
  return rectangle(x, x + 3 * outsideDiameter, base, z + rise + outsideDiameter);
};

/** An obstacle narrow enough to stand under the crest of a bend: round, or round-topped where it is high. */
function roundObstacle(center: number, base: number, height: number, most: number): Flat[] {
  const radius = Math.min(height / 2, most);
  return Array.from({ length: 48 }, (_, step): Flat => {
    const turn = toRadians((step * 180) / 24);
    const middle = step <= 24 ? base + height - radius : base + radius;
    return [center + radius * cos(turn), middle + radius * sin(turn)];
  });
}
