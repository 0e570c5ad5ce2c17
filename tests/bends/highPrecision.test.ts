/** Exact formulas against 50-digit arithmetic by a general-purpose library. Lengths [in], angles [°]. */
import Decimal from "decimal.js";
import { bendGain } from "../../src/bends/shapes/bendGain";
import { offsetAngle } from "../../src/bends/shapes/offsetAngle";
import { offsetMultiplier, offsetShrink, offsetSpacing } from "../../src/bends/shapes/offset";
import { saddleShrink, saddleSpacing } from "../../src/bends/shapes/saddle";
import { stagger } from "../../src/bends/groups/stagger";
import { sweepLayout } from "../../src/bends/groups/sweep";

const D = Decimal.clone({ precision: 50 });
const PI = D.acos(-1);
const rad = (degrees: number) => PI.times(degrees).div(180);
const csc = (degrees: number) => new D(1).div(rad(degrees).sin());
const tan = (degrees: number) => rad(degrees).tan();
/** 2R·tan(A/2) − R·A. */
const gain = (angle: number, radius: number) =>
  tan(angle / 2)
    .times(2)
    .minus(rad(angle))
    .times(radius);

/** Relative error allowed: a few units in the last place of a double, with the cancellation of near-equal terms. */
const RELATIVE = 1e-12;
const same = (value: number, exact: Decimal) =>
  expect(new D(value).minus(exact).abs().toNumber()).toBeLessThan(RELATIVE * Math.max(1, exact.abs().toNumber()));

const ANGLES = [1, 5, 10, 15, 22.5, 30, 37.3, 45, 60, 75, 90];

test.each(ANGLES)("offset at %d°", (angle) => {
  const [rise, radius] = [17.375, 4.5];
  same(offsetMultiplier(angle), csc(angle));
  same(offsetSpacing(rise, angle), csc(angle).times(rise));
  same(offsetSpacing(rise, angle, radius), csc(angle).times(rise).minus(gain(angle, radius)));
  same(offsetShrink(rise, angle), tan(angle / 2).times(rise));
  same(
    offsetShrink(rise, angle, radius),
    tan(angle / 2)
      .times(rise)
      .minus(gain(angle, radius).times(2)),
  );
  same(stagger(rise, angle), tan(angle / 2).times(rise));
  same(bendGain(angle, radius), gain(angle, radius));
  same(bendGain(angle, radius, 0.922), gain(angle, radius).plus(tan(angle / 2).times(0.922)));
});

test.each(ANGLES)("offset angle %d° comes back from its spacing", (angle) => {
  const spacing = csc(angle).times(17.375).minus(gain(angle, 4.5)).toNumber();
  expect(Math.abs(offsetAngle(17.375, spacing, 4.5) - angle)).toBeLessThan(angle === 90 ? 1e-6 : 1e-9);
});

test.each([20, 30, 45, 60, 100])("three-bend saddle at %d°", (angle) => {
  const [height, radius] = [13.25, 4];
  const lift = new D(1)
    .div(rad(angle / 2).cos())
    .minus(1)
    .times(radius);
  const corner = lift.plus(height);
  const half = gain(angle / 2, radius).plus(gain(angle, radius).div(2));
  const spacing = csc(angle / 2)
    .times(corner)
    .plus(tan(angle / 4).times(radius))
    .minus(half);
  same(saddleSpacing(height, angle, radius), spacing);
  same(saddleShrink(height, angle, radius), corner.times(tan(angle / 4)).minus(half));
  same(saddleSpacing(height, angle), csc(angle / 2).times(height));
  same(saddleShrink(height, angle), tan(angle / 4).times(height));
});

test("sweep", () => {
  same(sweepLayout(90, 24, 9).spacing, PI.div(2).times(24).div(9));
  same(sweepLayout(90, 24, 9, 4).spacing, tan(5).times(48).minus(gain(10, 4)));
});
