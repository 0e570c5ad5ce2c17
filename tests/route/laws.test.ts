/** Laws every route keeps, on random routes with every kind of step. */
import fc from "fast-check";
import type { Vec3 } from "../../src/geometry/vector";
import { pathProblems } from "../../src/route/problems";
import { readRoute } from "../../src/route/text/readRoute";
import { resolveRoute } from "../../src/route/resolveRoute";
import type { Pull, RouteStep } from "../../src/route/text/types";
import { writeRoute } from "../../src/route/text/writeRoute";
import { expectNear } from "../support/nearVectors";
import { partsOf } from "../support/pulls";
import { randomRoute } from "../support/randomRoutes";

const RADIUS = 4;
const pullsOf = (steps: readonly RouteStep[]) => resolveRoute(steps, RADIUS).pulls;
const pointsOf = (pulls: readonly Pull[]) => pulls.map(({ points }) => points);
const reworded = (steps: readonly RouteStep[], words: Record<string, string>) =>
  readRoute(writeRoute(steps).replace(/[a-z]+/g, (word) => words[word] ?? word));
const bendsOf = (pulls: readonly Pull[]) =>
  pulls.flatMap((pull) => partsOf(pull).bends.map(({ angle, rotation }) => [angle, rotation]));

const TURNED = { east: "north", north: "up", up: "east", west: "south", south: "down", down: "west" };
const MIRRORED = { east: "west", west: "east" };

test("a written route resolves to the same points", () => {
  fc.assert(
    fc.property(randomRoute, (steps) => {
      expect(pullsOf(readRoute(writeRoute(steps)))).toEqual(pullsOf(steps));
    }),
  );
});

test("a route with its directions turned has its points turned, and the same bends", () => {
  fc.assert(
    fc.property(randomRoute, (steps) => {
      const [pulls, turned] = [pullsOf(steps), pullsOf(reworded(steps, TURNED))];
      const turn = ([east, north, up]: Vec3): Vec3 => [up, east, north];
      expectNear(pointsOf(turned), pointsOf(pulls).map((points) => points.map(turn))); // prettier-ignore
      expectNear(bendsOf(turned), bendsOf(pulls));
    }),
  );
});

test("a route with east and west changed about is mirrored: its rotations go the other way", () => {
  fc.assert(
    fc.property(randomRoute, (steps) => {
      const [pulls, mirrored] = [pullsOf(steps), pullsOf(reworded(steps, MIRRORED))];
      const mirror = ([east, north, up]: Vec3): Vec3 => [-east, north, up];
      expectNear(pointsOf(mirrored), pointsOf(pulls).map((points) => points.map(mirror))); // prettier-ignore
      // Half a turn is told as 180 either way, but for rounding.
      const halfTurn = (rotation: number) => Math.abs(rotation - 180) < 1e-9;
      const flipped = bendsOf(pulls).map(([angle, rotation]) => [angle, halfTurn(rotation!) ? 180 : -rotation!]);
      expectNear(bendsOf(mirrored), flipped);
    }),
  );
});

test("each pull starts where the one before ends", () => {
  fc.assert(
    fc.property(randomRoute, (steps) => {
      const pulls = pullsOf(steps);
      pulls.slice(1).forEach(({ points }, index) => expect(points[0]).toEqual(pulls[index]!.points.at(-1)));
      expect(pulls).toHaveLength(1 + steps.filter(({ kind }) => kind === "box").length);
    }),
  );
});

test("corners are the inner points, in step order, and each group is whole", () => {
  fc.assert(
    fc.property(randomRoute, (steps) => {
      const pulls = pullsOf(steps);
      for (const { points, corners } of pulls) expect(corners.map(({ point }) => point)).toEqual(points.slice(1, -1));
      const corners = pulls.flatMap((pull) => pull.corners);
      let group = 0;
      corners.forEach((corner, index) => {
        const before = corners[index - 1];
        if (corner.place === 1) group += 1;
        expect(corner.group).toBe(group);
        expect(corner.step).toBeGreaterThanOrEqual(before?.step ?? 1);
        if (before && corner.place > 1) expect([before.place + 1, before.of]).toEqual([corner.place, corner.of]);
        else if (before) expect(before.place).toBe(before.of);
        expect(corner.radius).toBe(RADIUS);
      });
    }),
  );
});

test("the random routes can be bent, so that these laws are of real runs", () => {
  fc.assert(
    fc.property(randomRoute, (steps) => expect(pullsOf(steps).flatMap((pull) => pathProblems(pull))).toEqual([])),
  );
});

test("resolving leaves the steps as they were", () => {
  fc.assert(
    fc.property(randomRoute, (steps) => {
      const before = structuredClone(steps);
      pullsOf(steps);
      expect(steps).toEqual(before);
    }),
  );
});
