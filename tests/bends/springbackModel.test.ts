import { springbackAt, springbackModel } from "../../src/bends/testBends/springbackModel";
import { readSpringbackTests } from "../../src/bends/testBends/readTestBends";

test("one test gives springback in proportion to the angle", () => {
  const model = springbackModel([{ angle: 90, springback: 4.5 }]);
  expect(model).toEqual({
    kind: "proportional",
    intercept: 0,
    slope: 0.05,
    from: 0,
    to: 180,
    largestMiss: 0,
  });
  expect(springbackAt(model, 30)).toBeCloseTo(1.5, 12);
});

test("two tests give the line through both", () => {
  const model = springbackModel([
    { angle: 30, springback: 3 },
    { angle: 90, springback: 6 },
  ]);
  expect(model.kind).toBe("straight line");
  expect(springbackAt(model, 60)).toBeCloseTo(4.5, 12);
  expect(springbackAt(model, 105)).toBeCloseTo(6.75, 12);
  expect(model.largestMiss).toBeLessThan(1e-12);
});

test("more tests give the line of least squares with its largest miss", () => {
  // By hand: means 60 and 4; slope (−30·−1 + 0·−1 + 30·2)/(900 + 900) = 0.05; misses 0.5, −1, 0.5.
  const model = springbackModel([
    { angle: 30, springback: 3 },
    { angle: 60, springback: 3 },
    { angle: 90, springback: 6 },
  ]);
  expect(model.kind).toBe("least squares");
  expect(model.slope).toBeCloseTo(0.05, 12);
  expect(model.intercept).toBeCloseTo(1, 12);
  expect(model.largestMiss).toBeCloseTo(1, 12);
});

test("a line is not trusted far from its tests, nor below zero", () => {
  const model = springbackModel([
    { angle: 30, springback: 0.5 },
    { angle: 60, springback: 4.5 },
  ]);
  expect([model.from, model.to]).toEqual([15, 75]);
  expect(() => springbackAt(model, 76)).toThrow(
    "angle must lie within 15° of the tested angles, 15° to 75°; got 76°. Bend a test nearer to it.",
  );
  expect(() => springbackAt(model, 14)).toThrow("angle must lie within 15°");
  expect(() => springbackAt(model, 20)).toThrow(
    "The tests give a springback of -0.83° at 20°, below 0°. Bend a test nearer to it.",
  );
});

test("tests at one angle, or none at all, are refused", () => {
  const twice = { angle: 90, springback: 4 };
  expect(() => springbackModel([])).toThrow("tests must hold at least one test bend; got none.");
  expect(() => springbackModel([twice, { ...twice, springback: 5 }])).toThrow(
    "tests must stand at angles at least 1° apart; all are near 90°.",
  );
});

test("test bends are read by their headers, by dial or by springback", () => {
  const range = [
    ["Note", "Springback", "Angle", "Dial"],
    ["first", "", 90, 94],
    ["", 2.5, "45°", ""],
  ];
  expect(readSpringbackTests(range)).toEqual([
    { angle: 90, springback: 4 },
    { angle: 45, springback: 2.5 },
  ]);
  expect(() => readSpringbackTests([["Dial"], [94]])).toThrow(`tests must have the column "Angle"`);
  expect(() =>
    readSpringbackTests([
      ["Angle", "Dial"],
      [90, 85],
    ]),
  ).toThrow("tests row 2: Dial must be at least 90° and at most 135°; got 85°.");
  expect(() => readSpringbackTests([["Angle"], [90]])).toThrow(
    "tests row 2: Dial must be an angle in degrees; got an empty cell.",
  );
});
