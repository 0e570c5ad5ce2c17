/** Inverse functions and laws. Lengths [in], angles [°]. */
import fc from "fast-check";
import { kickAngle, kickLength, kickRise } from "../../src/bends/shapes/kick";
import { offsetShrink, offsetSpacing } from "../../src/bends/shapes/offset";
import { offsetAngle } from "../../src/bends/shapes/offsetAngle";
import { leastRise, offsetShape } from "../../src/bends/shapes/offsetShape";
import { parallelKicks, parallelOffsets } from "../../src/bends/groups/parallel";
import { printedColumn } from "../../src/bends/shapes/printedConstants";
import { rollingOffset } from "../../src/bends/shapes/rollingOffset";
import { saddleShape } from "../../src/bends/shapes/saddleShape";
import { heldRadius, releasedRadius } from "../../src/bends/testBends/springback";
import { stubDeduct, stubMark } from "../../src/bends/shapes/stub";
import { concentricGroup } from "../../src/bends/groups/concentricGroup";

/** Degrees lost where the spacing hardly changes with the angle, close to 90°. */
const ANGLE_BACK = 1e-7;
const angles = fc.double({ min: 1, max: 89, noNaN: true });
const lengths = fc.double({ min: 0.1, max: 200, noNaN: true });
const radii = fc.double({ min: 0.5, max: 30, noNaN: true });

test("the angle of an offset comes back from its spacing, with sharp corners and with true arcs", () => {
  fc.assert(
    fc.property(angles, lengths, radii, (angle, more, radius) => {
      const rise = leastRise(angle, radius) + more;
      expect(Math.abs(offsetAngle(rise, offsetSpacing(rise, angle)) - angle)).toBeLessThan(ANGLE_BACK);
      expect(Math.abs(offsetAngle(rise, offsetSpacing(rise, angle, radius), radius) - angle)).toBeLessThan(ANGLE_BACK);
    }),
  );
});

test("every printed multiplier leads back to its angle", () => {
  for (const { angle, value } of printedColumn("multiplier")) {
    expect(offsetAngle(7, 7 * value, "table")).toBe(angle);
  }
});

test("the angle and the length of a kick come back from its rise", () => {
  fc.assert(
    fc.property(angles, lengths, radii, (angle, more, radius) => {
      const length = (angle * Math.PI * radius) / 180 + more;
      const rise = kickRise(length, angle, radius);
      expect(Math.abs(kickAngle(length, rise, radius) - angle)).toBeLessThan(1e-5);
      expect(Math.abs(kickRise(length, kickAngle(length, rise, radius), radius) - rise)).toBeLessThan(1e-9);
      expect(kickAngle(length, kickRise(length, angle))).toBeCloseTo(angle, 7);
      expect(kickLength(kickRise(length, angle), angle)).toBeCloseTo(length, 9);
    }),
  );
});

test("a very small radius gives what sharp corners give", () => {
  fc.assert(
    fc.property(angles, lengths, (angle, rise) => {
      expect(offsetSpacing(rise, angle, 1e-12)).toBeCloseTo(offsetSpacing(rise, angle), 9);
      expect(offsetShrink(rise, angle, 1e-12)).toBeCloseTo(offsetShrink(rise, angle), 9);
    }),
  );
});

test("the least rise leaves no straight between the bends, and the crest is the corner less its height over the arc", () => {
  expect(offsetShape(leastRise(33, 4), 33, 4).straight).toBeCloseTo(0, 12);
  const { corner, crest } = saddleShape(4, 45, 4);
  expect(crest).toBe(4);
  expect(corner).toBeCloseTo(4.3296, 4);
});

test("a rolling offset is the diagonal, turned from the rise toward the roll", () => {
  expect(rollingOffset(3, 4)).toEqual({ trueOffset: 5, plane: expect.closeTo(53.130102354156, 10) });
  expect(rollingOffset(0, -2)).toEqual({ trueOffset: 2, plane: -90 });
  expect(rollingOffset(-5, 0).plane).toBe(180);
});

/** Distance between two parallel lines through (x1, y1) and (x2, y2) at an angle. */
const apart = (angle: number, [x1, y1]: [number, number], [x2, y2]: [number, number]) => {
  const turn = (angle * Math.PI) / 180;
  return Math.abs(Math.cos(turn) * (y2 - y1) - Math.sin(turn) * (x2 - x1));
};

test("staggered kicks and offsets keep their spacing, conduit 1 on the side the bend turns to", () => {
  const kicks = parallelKicks(40, 5, 3);
  expect(kicks.map(({ conduit }) => conduit)).toEqual([1, 2, 3]);
  // The bend turns toward +y, so conduit 1 lies at y = 10, conduit 2 at 5, conduit 3 at 0.
  expect(apart(40, [kicks[0]!.mark, 10], [kicks[1]!.mark, 5])).toBeCloseTo(5, 12);
  expect(apart(40, [kicks[0]!.mark, 10], [kicks[2]!.mark, 0])).toBeCloseTo(10, 12);
  const offsets = parallelOffsets(9, 40, 5, 3, 4);
  expect(offsets.map(({ first }) => first)).toEqual(kicks.map(({ mark }) => mark));
  for (const { first, second } of offsets) expect(second - first).toBeCloseTo(offsetSpacing(9, 40, 4), 12);
});

test("letting go keeps the arc's length, and holding is its inverse", () => {
  fc.assert(
    fc.property(angles, radii, fc.double({ min: 0, max: 20, noNaN: true }), (angle, radius, springback) => {
      const released = releasedRadius(radius, angle, springback);
      expect(released * angle).toBeCloseTo(radius * (angle + springback), 8);
      expect(heldRadius(released, angle, springback)).toBeCloseTo(radius, 9);
    }),
  );
  expect(releasedRadius(4, 90, 4.5)).toBeCloseTo(4.2, 12);
});

test("a stub's mark and deduct add up to the stub", () => {
  expect(stubDeduct(4, 0.706)).toBeCloseTo(4.353, 12);
  expect(stubMark(10.125, stubDeduct(4, 0.706, 0.647))).toBeCloseTo(5.125, 12);
});

test("a concentric group grows by the spacing, its arcs by the spacing times the angle", () => {
  const group = concentricGroup(24, 3, 4, 60);
  expect(group.map(({ radius }) => radius)).toEqual([24, 27, 30, 33]);
  expect(group[3]!.arc - group[0]!.arc).toBeCloseTo(3 * Math.PI, 12);
});
