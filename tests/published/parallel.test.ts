/**
 * Conduits side by side, and springback from two test bends. [in], [°]
 * Stagger, 2 in. at 30°: .536, geoscience.blog, "How do you find the parallel offset" (weak). tan of half the angle: .414214 at
 * 45°, .267949 at 30°, .198912 at 22.5°, forums.mikeholt.com 118073 (a forum).
 * Concentric 90s of 2 in. rigid with 2 in. clear at R 20, 24-3/8, 28-3/4, their lengths by R × 90 × .0175:
 * porcupinepress.com, _bending/Concentric (a publisher of trade textbooks). That factor is 0.27 % above π/180.
 * Springback: no print with numbers was found; the two tests are made up, the line through them is worked out by hand.
 */
import { offsetStagger } from "../../functions/bend/offsets";
import { bendArc } from "../../functions/bend/bends";
import { springbackAt, springbackModel } from "../../src/bends/testBends/springbackModel";

test("the stagger of parallel offsets", () => {
  expect(offsetStagger(2, 30)).toBeCloseTo(0.536, 3);
  for (const [angle, half] of [
    [45, 0.414214],
    [30, 0.267949],
    [22.5, 0.198912],
  ] as const)
    // prettier-ignore
    expect(offsetStagger(1, angle)).toBeCloseTo(half, 6);
});

test.each([
  [20, 31.5],
  [24.375, 38.39],
  [28.75, 45.28],
])("the arc of a concentric 90 of R %d, as printed and exact", (radius, printed) => {
  expect(Math.abs(radius * 90 * 0.0175 - printed)).toBeLessThan(0.006);
  const exact = bendArc(90, radius);
  expect(exact / printed).toBeCloseTo(Math.PI / 180 / 0.0175, 3);
});

test("two test bends, 30 to 28.1 and 110 to 105.3: 90 takes 94.1451, 45 takes 47.5130", () => {
  const model = springbackModel([
    { angle: 28.1, springback: 1.9 },
    { angle: 105.3, springback: 4.7 },
  ]);
  expect(90 + springbackAt(model, 90)).toBeCloseTo(94.1451, 4);
  expect(45 + springbackAt(model, 45)).toBeCloseTo(47.513, 4);
});
