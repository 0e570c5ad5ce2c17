import { ROUNDING } from "../../units/tolerances";
import { arcLength } from "../../geometry/arc";
import { legsOf, type Path } from "../../geometry/path";
import { pointAlong } from "../../geometry/span";
import { dot, norm, squareTo, subtract, type Vec3 } from "../../geometry/vector";
import type { Piece } from "../run/builtRun";
import { isAngle } from "../../geometry/angle";

/** A measure that the finished piece must have, or words where there is nothing to read off a tape. */
export interface ShapeCheck {
  readonly what: string;
  /** Words and lengths [in] in the order they are read. */
  readonly is: readonly (string | number)[];
}

/**
 * What to measure on a finished piece, taken from its path: legs between bends (to the back of a 90, which a tape
 * reaches; to the corner of the centerlines else), offsets between parallel straights, the crest of a saddle, the far
 * end. A mirrored piece passes all but the
 * last, which tells left from right.
 */
export function shapeChecks(piece: Piece, path: Path, outsideDiameter: number): ShapeCheck[] {
  if (piece.bends.length === 0) return [];
  return [
    ...legChecks(piece, path, outsideDiameter),
    ...offsetChecks(piece, path),
    ...crestChecks(piece, path),
    ...planeChecks(path),
    ...endChecks(path),
  ];
}

function legChecks({ bends }: Piece, path: Path, outsideDiameter: number): ShapeCheck[] {
  const backOf = (bend: number): boolean => isAngle(bends[bend]!.angle, 90);
  const place = (bend: number): string => `the ${backOf(bend) ? "back" : "corner"} of bend ${bend + 1}`;
  return legsOf(path).legs.flatMap((leg, index): ShapeCheck[] => {
    const [before, after] = [bends[index - 1], bends[index]];
    if (before && after) {
      if (before.corner.kind === "sweep" && before.corner.group === after.corner.group) return [];
      const pair = `bends ${index} and ${index + 1}`;
      if (!backOf(index - 1) || !backOf(index)) return [{ what: `Corner to corner, ${pair}`, is: [leg] }];
      if (isAngle(after.plane, 0)) return [{ what: `Back to back, ${pair}`, is: [leg + outsideDiameter] }];
      return [
        { what: `Center to center of the straights before bend ${index} and after bend ${index + 1}`, is: [leg] },
      ];
    }
    const bend = before ? index - 1 : index;
    const is = [backOf(bend) ? leg + outsideDiameter / 2 : leg];
    return [{ what: before ? `From ${place(bend)} to the far end` : `From the datum end to ${place(bend)}`, is }];
  });
}

/** Straights on both sides of two bends that run the same way: how far apart they are, or that they are in line. */
function offsetChecks({ bends }: Piece, path: Path): ShapeCheck[] {
  const { directions } = legsOf(path);
  const checks: ShapeCheck[] = [];
  for (let from = 0; from < directions.length; from++) {
    const to = sameWay(directions, from);
    if (to === undefined || bends[from]!.corner.kind === "sweep") continue;
    const apart = norm(squareTo(subtract(path.points[to]!, path.points[from]!), directions[from]!));
    const straights = `Straights before bend ${from + 1} and after bend ${to}`;
    checks.push(
      apart < ROUNDING
        ? { what: straights, is: ["in one line"] }
        : { what: `${straights}, face to same face`, is: [apart] },
    );
  }
  return checks;
}

/** The first leg after a bend or more that runs the same way as a leg; none past the first. */
function sameWay(directions: readonly Vec3[], from: number): number | undefined {
  const place = directions.slice(from + 2).findIndex((direction) => {
    const start = directions[from]!;
    return norm(squareTo(direction, start)) < ROUNDING && dot(direction, start) > 0;
  });
  return place < 0 ? undefined : from + 2 + place;
}

/** Middle bends of three-bend saddles: how far the crest stands over the line of the straight before. */
function crestChecks({ bends }: Piece, path: Path): ShapeCheck[] {
  const { directions } = legsOf(path);
  return bends.flatMap(({ corner, start, angle, radius }, index): ShapeCheck[] => {
    const first = bends[index - 1];
    const opens = first?.corner.group === corner.group;
    if (corner.kind !== "three-bend saddle" || corner.place !== 2 || !opens) return [];
    const crest = pointAlong(path, start + arcLength(angle, radius) / 2).point;
    const rise = norm(squareTo(subtract(crest, path.points[index - 1]!), directions[index - 1]!));
    return [
      { what: `Crest of bend ${index + 1} over the straight before bend ${index}, face to same face`, is: [rise] },
    ];
  });
}

/** A piece in one plane lies flat on the floor: one that does not has a bend out of line. */
function planeChecks({ points, radii }: Path): ShapeCheck[] {
  const flat = radii.length > 1 && points.every(([, left]) => Math.abs(left) < ROUNDING);
  return flat ? [{ what: "Laid on a level floor", is: ["every bend lies flat"] }] : [];
}

function endChecks({ points }: Path): ShapeCheck[] {
  const end = points.at(-1)!;
  return [
    { what: "End to end, center to center", is: [norm(end)] },
    {
      what: "Far end, seen from the datum end with the first straight level and bend 1 up",
      is: [...way(end[0], "ahead", "back"), ...way(end[2], "up", "down"), ...way(end[1], "left", "right")].slice(0, -1),
    },
  ];
}

const way = (length: number, positive: string, negative: string): (string | number)[] =>
  Math.abs(length) < ROUNDING ? [] : [Math.abs(length), ` ${length > 0 ? positive : negative}`, ", "];
