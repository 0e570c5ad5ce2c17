/** Tables that single-bend functions spill, and the dial. Expected values by hand unless said. Lengths [in], angles [°]. */
import { bendDial, bendSpringbackModel } from "../../functions/bend/bends";
import { kickNinetyOf, kickParallel } from "../../functions/bend/kicks";
import { offsetBox, offsetCompare, offsetParallel, offsetRolling } from "../../functions/bend/offsets";
import { saddleCompare, saddleFour } from "../../functions/bend/saddles";
import { backMarkOf, stubMarkOf } from "../../functions/bend/stubs";
import { sweepErrorOf, sweepMarksOf, sweepParallel } from "../../functions/bend/sweeps";
import { shoeCalibrate } from "../../functions/bend/testBends";
import { placeAt } from "../support/bentLine";
import { expectNear } from "../support/nearVectors";

/** Values worked out by hand to four places. */
const FOUR_PLACES = 5e-5;

test("a 90 with 5° of springback reads 95 from zero, 90 from −5", () => {
  expect(bendDial(90, 5)).toBe(95);
  expect(bendDial(90, 5, -5)).toBe(90);
  expect(bendDial(100, 5)).toBe(105);
});

test("a 10 in. stub marks at 5 with deduct 5, at 4 with 6; a 20 in. back-to-back marks the star at 20", () => {
  expect([stubMarkOf(10, 5), stubMarkOf(10, 6), backMarkOf(20), backMarkOf(20, 6)]).toEqual([5, 4, 20, 14]);
});

test("the three ways of an offset stand side by side, and say when the handbook has none", () => {
  const [, spacing, shrink, made] = offsetCompare(6, 30, 4);
  expect([spacing, shrink, made].map((row) => row?.[0])).toEqual(["Spacing", "Shrink", "Rise it makes"]);
  expectNear(spacing!.slice(1), [12, 12, 11.9508, 0.0492], FOUR_PLACES);
  expectNear(shrink!.slice(1), [1.5, 1.6077, 1.5093, -0.0093], FOUR_PLACES);
  expectNear(made!.slice(1), [6.0246, 6.0246, 6, 0.0246], FOUR_PLACES);
  for (const row of offsetCompare(6, 20, 4).slice(1))
    expect([row[1], row[4]]).toEqual(["not in print", "not in print"]);
});

test("the three ways of a saddle stand side by side, for either way of the hook", () => {
  // Exact by hand: corner 4.3296, slant 11.3137, less the setbacks 0.7956 and 1.6569, plus arcs of 1.5708 each: 12.0028.
  const [, toward, crestToward, away, crestAway, ahead] = saddleCompare(4, 45, 4, 0.647);
  expectNear(toward!.slice(1), [10, 10.4525, 9.785, 0.215], FOUR_PLACES);
  expectNear(away!.slice(1), [10, 10.4525, 12.6498, -2.6498], FOUR_PLACES);
  expectNear(ahead!.slice(1, 3), [0.75, 0.7956], FOUR_PLACES);
  expect([toward, crestToward, away, crestAway, ahead].map((row) => row?.[0])).toEqual([
    "Outer mark, hook toward center",
    "Crest it makes, hook toward center",
    "Outer mark, hook away from center",
    "Crest it makes, hook away from center",
    "Center mark ahead",
  ]);
  expect(
    saddleCompare(4, 30, 4)
      .slice(1)
      .map((row) => row[1]),
  ).toEqual(Array(5).fill("not in print"));
});

test("bent at the handbook's marks, a saddle's crest and an offset's rise come out as the table says", () => {
  const [, , crestToward, , crestAway] = saddleCompare(4, 45, 4, 0.647);
  const [outerArc, centerArc] = [Math.PI / 2, Math.PI];
  // Hook toward the center: the outer bend's inner end lies 0.647 past the arrow's mark; away: its outer end does, inward.
  const crest = (outerStart: number) =>
    placeAt(
      [
        { start: outerStart, angle: 22.5, radius: 4 },
        { start: 20 - centerArc / 2, angle: -45, radius: 4 },
      ],
      20,
    ).y;
  expectNear([crestToward![1], crestAway![1]], [crest(20 - 10 - 0.647 - outerArc), crest(20 - 10 + 0.647)]);
  const made = placeAt(
    [
      { start: 2, angle: 30, radius: 4 },
      { start: 14, angle: -30, radius: 4 },
    ],
    20,
  ).y;
  expectNear([offsetCompare(6, 30, 4)[3]![1]], [made]);
});

test("four-bend saddle, rolling and box offset", () => {
  expectNear(saddleFour(3, 12, 30, "table").slice(1), [
    [1, 0, 30, 0],
    [2, 6, 30, 0.75],
    [3, 18, 30, 0.75],
    [4, 24, 30, 1.5],
  ]);
  expectNear(offsetRolling(8, 12)[1]!, [14.4222, 56.3099], FOUR_PLACES);
  expectNear(offsetBox(0.5, 3)[1]!, [4.7802, 3, 9, 0.0209], FOUR_PLACES);
  expectNear(offsetBox(0.5, 1, 5)[1]!, [7.1808, 1, 5, 0.0314], FOUR_PLACES);
});

test("parallel offsets and kicks, in order of the conduits", () => {
  expectNear(
    offsetParallel(6, 30, 4, 3).slice(1),
    [
      [1, 0, 12],
      [2, 1.0718, 13.0718],
      [3, 2.1436, 14.1436],
    ],
    1e-4,
  );
  expectNear(
    kickParallel(45, 6, 2).slice(1),
    [
      [1, 0],
      [2, 2.4853],
    ],
    FOUR_PLACES,
  );
  expect(kickNinetyOf(6, 30, 0.706, "table")).toBeCloseTo(12.353, 9);
});

test("a sweep's marks, from half a spacing or from where the user wants, and for the shoe", () => {
  const marks = sweepMarksOf(90, 24, 3);
  expectNear(
    marks.slice(1),
    [
      [1, 6.2832, 30, 30],
      [2, 18.8496, 30, 60],
      [3, 31.4159, 30, 90],
    ],
    FOUR_PLACES,
  );
  expectNear(
    sweepMarksOf(90, 24, 3, 10)
      .slice(1)
      .map((row) => row[1]),
    [10, 22.5664, 35.1327],
    FOUR_PLACES,
  );
  // 48·tan 15° − (8·tan 15° − 4·π/6) = 40 × 0.26794919 + 2.0943951.
  const exact = sweepMarksOf(90, 24, 3, 0, 4);
  expectNear([exact[2]![1]], [12.8124], FOUR_PLACES);
  const error = sweepErrorOf(90, 24, 3, 4);
  expect(error.map((row) => row[0])).toEqual([
    "Quantity",
    "Radius touched",
    "Short of the tangent",
    "Bulge",
    "Spacing to add",
  ]);
  // Radius 4 + 20·(π/12)/tan 15° = 23.5410; bulge 19.5410 × (1/cos 15° − 1) = 0.6893.
  expectNear(
    error.slice(1).map((row) => row[1]),
    [23.541, 0.459, 0.6893, 0.246],
    FOUR_PLACES,
  );
});

test("a concentric group turns 90 unless said", () => {
  expectNear(
    sweepParallel(24, 3, 2).slice(1),
    [
      [1, 24, 37.6991],
      [2, 27, 42.4115],
    ],
    FOUR_PLACES,
  );
  expectNear(sweepParallel(24, 3, 2, 45)[2]!, [2, 27, 21.2058], FOUR_PLACES);
});

test("springback's model in a row", () => {
  expect(
    bendSpringbackModel([
      ["Angle", "Dial"],
      [90, 94.5],
    ])[1],
  ).toEqual(["proportional", 0, 0.05, 0, 180, 0]);
});

test("a test bend's table, springback only when the dial was read, stretch only when the radius was measured", () => {
  // Back gain 2 × 4.353 − 2π = 2.42281, so a leg of 22.42281 belongs to R 4.
  const table = shoeCalibrate(30, 5, 10, 22.42281, 0.706);
  expect(table.map((row) => row[0])).toEqual([
    ...["Quantity", "Radius", "Deduct", "Gain", "Back gain", "Arrow lead", "Star"],
    ...["Notch 30°", "Notch 45°", "Notch 60°", "Radius per degree"],
  ]);
  expectNear(
    table.slice(1, 7).map((row) => row[1]),
    [4, 5, 1.7168, 2.4228, 0.647, 2.5772],
    FOUR_PLACES,
  );
  const full = shoeCalibrate(30, 5, 10, 22.42281, 0.706, 95, 90, 4);
  expect(full.slice(11).map((row) => row[0])).toEqual(["Springback", "Stretch"]);
  expect(full[11]?.slice(1, 5)).toEqual([5, 1, expect.closeTo(0.4082, 4), "°"]);
});
