import { runPieces, type BuiltRun } from "./builtRun";
import { bodyOf } from "./pullEnds";
import type { Vec3 } from "../../geometry/vector";

/** Developed length of the conduit of a run [in]: legs less the gain of each bend. */
export const runLength = (built: BuiltRun): number => built.pulls.reduce((sum, pull) => sum + pull.parts.developed, 0);

/** Bends to make in a run; factory elbows are bought. */
export const runBends = (built: BuiltRun): number => runPieces(built).reduce((sum, { bends }) => sum + bends.length, 0);

/** Factory elbows of a run. */
export const runElbows = (built: BuiltRun): number => built.pulls.reduce((sum, { elbows }) => sum + elbows.length, 0);

/** Degrees of bend in each pull of a run, box to box. */
export const pullDegrees = (built: BuiltRun): number[] =>
  built.pulls.map((pull) => pull.parts.bends.reduce((sum, bend) => sum + bend.angle, 0));

/** The most degrees of bend between two pull points of a run. */
export const runDegrees = (built: BuiltRun): number => Math.max(0, ...pullDegrees(built));

/** Corner points of a run as a table with a header row [in]. */
export function runPoints(built: BuiltRun): (string | number)[][] {
  const rows: (string | number)[][] = [];
  const row = ([east, north, up]: Vec3, at: string) => void rows.push([rows.length + 1, east, north, up, at]);
  built.pulls.forEach((pull, pullIndex) => {
    const { end, whip } = pull.pull;
    const isLast = pullIndex === built.pulls.length - 1;
    pull.pull.points.forEach((point, index, points) => {
      const last = index === points.length - 1;
      if (index === 0 && pullIndex > 0) return;
      row(
        point,
        index === 0
          ? "start"
          : !last
            ? "corner"
            : isLast && !whip && !bodyOf(end)
              ? "end"
              : (bodyOf(end) ?? (end === "whip" ? "flexible" : "box")),
      );
    });
    if (whip) row(whip.to, whip.toBox ? "box" : isLast ? "end" : "flexible");
  });
  return [["Point", "East", "North", "Up", "At"], ...rows];
}
