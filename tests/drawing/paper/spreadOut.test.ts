import fc from "fast-check";
import { spreadOut } from "../../../src/drawing/paper/spreadOut";

/** Page units of rounding. */
const ROUNDING = 1e-9;

test("those that stand clear stay where they are", () => {
  expect(spreadOut([10, 40, 90], 20, 0, 100)).toEqual([10, 40, 90]);
});

test("two that stand close part evenly around their middle", () => {
  expect(spreadOut([50, 54], 20, 0, 100)).toEqual([42, 62]);
});

test("at an edge they make room inward", () => {
  expect(spreadOut([1, 2, 3], 10, 5, 100)).toEqual([5, 15, 25]);
  expect(spreadOut([98, 99], 10, 0, 95)).toEqual([85, 95]);
});

test("too many for the room are spaced evenly over it", () => {
  expect(spreadOut([1, 1, 1, 1, 1], 50, 0, 100)).toEqual([0, 25, 50, 75, 100]);
});

test("none at all", () => {
  expect(spreadOut([], 20, 0, 100)).toEqual([]);
});

test("places keep their order, their gap and the room, whatever the positions", () => {
  const positions = fc.array(fc.double({ min: -50, max: 350, noNaN: true }), { minLength: 1, maxLength: 15 });
  fc.assert(
    fc.property(positions, (list) => {
      const own = [...list].sort((a, b) => a - b);
      const places = spreadOut(own, 20, 0, 300);
      expect(places).toHaveLength(own.length);
      expect(Math.min(...places)).toBeGreaterThanOrEqual(-ROUNDING);
      expect(Math.max(...places)).toBeLessThanOrEqual(300 + ROUNDING);
      places.slice(1).forEach((place, index) => expect(place - places[index]!).toBeGreaterThanOrEqual(20 - 1e-6));
    }),
  );
});
