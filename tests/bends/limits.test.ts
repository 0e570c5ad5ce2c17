/** The limits' own values: what is just allowed, what is just refused, and what the refusal says. [in], [°] */
import { readBendForm, readCornerForm } from "../../src/bends/shapes/bendForm";
import { threeWays } from "../../src/bends/handbook/compare";
import { calibrate } from "../../src/bends/testBends/calibrate";
import { dialReading } from "../../src/bends/testBends/dial";
import { kickAngle, kickLength, kickRise } from "../../src/bends/shapes/kick";
import { printed, printedConstants } from "../../src/bends/shapes/printedConstants";
import { readHeightTo } from "../../src/bends/shapes/saddle";
import { saddleShape } from "../../src/bends/shapes/saddleShape";
import { springbackAt, springbackModel } from "../../src/bends/testBends/springbackModel";
import { readSpringbackTests } from "../../src/bends/testBends/readTestBends";
import { sweepLayout } from "../../src/bends/groups/sweep";
import { measuredShoe } from "../../src/bends/testBends/testBend";

test("a kick may be all arc: it rises R·(1 − cos A), and that rise needs the arc's length", () => {
  // R 4, 60°: arc 4π/3, rise 4·(1 − 1/2) = 2.
  const arc = (4 * Math.PI) / 3;
  expect(kickRise(arc, 60, 4)).toBeCloseTo(2, 12);
  expect(kickLength(4 * (1 - Math.cos(Math.PI / 3)), 60, 4)).toBeCloseTo(arc, 12);
  expect(() => kickRise(arc - 0.01, 60, 4)).toThrow("length must be at least 4.1888 in.");
});

test("a kick that stands square to the conduit rises by its whole length, and no more", () => {
  expect(kickAngle(12, 12)).toBe(90);
  expect(() => kickAngle(12, 12.01)).toThrow("rise must be at most 12 in. for a length of 12 in.; got 12.01 in.");
});

test("kicks by the printed multiplier: 2.6 at 22.5° (NAVEDTRA 14026, table 5-3)", () => {
  expect(kickRise(26, 22.5, "table")).toBeCloseTo(10, 12);
  expect(kickLength(10, 22.5, "table")).toBeCloseTo(26, 12);
});

test("a dial may be used from its first mark to its last", () => {
  expect(dialReading(90, 5, -5, -5, 90)).toBe(90);
  expect(() => dialReading(90, 5, 20, 20, 20)).toThrow("dial to must be above dial from (20°); got 20°.");
  expect(() => dialReading(10, 0, 106)).toThrow("start must lie on the dial, -5° to 105°; got 106°.");
  expect(() => dialReading(10, 5, 105)).toThrow("start at 90° or lower");
});

test("a way out of the dial's end is told only where there is one", () => {
  // 105 − 10 − 100 = −5: the dial's own beginning is the latest start.
  expect(() => dialReading(100, 10)).toThrow(
    "past its end at 105°; start at -5° or lower, or bend at most 95° in one go.",
  );
  expect(() => dialReading(101, 10)).toThrow("past its end at 105°; bend at most 95° in one go.");
  // From 60, 45 of springback use the dial up: no bend at all is left.
  expect(() => dialReading(80, 45, 60)).toThrow("past its end at 105°; the dial is too short for this springback.");
});

test("what has no place in print is told by its name, and an angle that only some tables have is found in those", () => {
  expect(() => printed("saddleShrink", 40)).toThrow("The printed tables give no saddle shrink for 40°;");
  expect(() => printed("saddleMultiplier", 22.5)).toThrow("The printed tables give no saddle spacing for 22.5°;");
  expect(printedConstants(22.5)).toMatchObject({ multiplier: 2.6, saddleMultiplier: undefined });
  expect(printedConstants(23)).toBeUndefined();
});

test("only what is missing from print is left out of a comparison; another fault is told", () => {
  const comparison = threeWays("Spacing", (form) => (form === "table" ? printed("multiplier", 25) : 1), 4);
  expect(comparison).toEqual({ quantity: "Spacing", handbook: undefined, sharp: 1, exact: 1 });
  const faulty = () => {
    throw new RangeError("a fault of ours");
  };
  expect(() => threeWays("Spacing", faulty, 4)).toThrow("a fault of ours");
});

test("arguments of a bend's form go by their own names", () => {
  expect(() => readBendForm(-4)).toThrow("radius must be above 0 in.; got -4 in.");
  expect(() => readCornerForm(0)).toThrow("radius must be above 0 in.; got 0 in.");
  expect(() => readHeightTo(5)).toThrow("height to must be crest or corner; got 5.");
  expect(() => readHeightTo("")).not.toThrow();
});

test("a saddle whose arcs just touch can be bent; lower it cannot, measured to the crest or to the corner", () => {
  // Corner of the touching arcs: (R·tan(A/4) + R·tan(A/2))·sin(A/2); the crest lies R·(1/cos(A/2) − 1) under it.
  const [radius, half] = [4, Math.PI / 6];
  const corner = radius * (Math.tan(half / 2) + Math.tan(half)) * Math.sin(half);
  const crest = corner - radius * (1 / Math.cos(half) - 1);
  expect(saddleShape(corner, 60, radius, "corner").straight).toBeCloseTo(0, 12);
  expect(saddleShape(crest, 60, radius).straight).toBeCloseTo(0, 12);
  expect(() => saddleShape(corner - 0.01, 60, radius, "corner")).toThrow(
    `height must be at least ${corner.toFixed(4)} in.`,
  );
  expect(() => saddleShape(crest - 0.01, 60, radius)).toThrow(`height must be at least ${crest.toFixed(4)} in.`);
  expect(() => saddleShape(crest - 1e-9, 60, radius)).toThrow("overlap");
});

test("a springback line holds from its first angle to its last, and may come down to 0", () => {
  const model = springbackModel([
    { angle: 30, springback: 0 },
    { angle: 31, springback: 1 },
  ]);
  expect([model.from, model.to]).toEqual([15, 46]);
  expect(springbackAt({ ...model, intercept: 0, slope: 0 }, 15)).toBe(0);
  expect(springbackAt(model, 46)).toBeCloseTo(16, 9);
  expect(() => springbackModel([model, model].map(() => ({ angle: 90, springback: 4 })))).toThrow(
    "all are near 90°. Give one of them, or bend one more at another angle.",
  );
});

test("test bends are read under either header, each value within its limits", () => {
  expect(readSpringbackTests([["Angle measured", "Dial reached"], [90, 94.5]])).toEqual([{ angle: 90, springback: 4.5 }]); // prettier-ignore
  expect(readSpringbackTests([["Angle", "Springback"], [90, 45]])).toEqual([{ angle: 90, springback: 45 }]); // prettier-ignore
  const refused =
    (...row: unknown[]) =>
    () =>
      readSpringbackTests([["Angle", "Springback"], row]);
  expect(refused(90, 46)).toThrow("tests row 2: Springback must be at least 0° and at most 45°; got 46°.");
  expect(refused(90, -1)).toThrow("tests row 2: Springback must be at least 0° and at most 45°; got -1°.");
  expect(refused(190, 4)).toThrow("tests row 2: Angle must be above 0° and below 180°; got 190°.");
});

test("a sweep may have its shoe's own radius", () => {
  // Shots that touch: the spacing is a shot's arc.
  expect(sweepLayout(90, 6, 3, 6).spacing).toBeCloseTo((6 * Math.PI) / 6, 12);
  expect(() => sweepLayout(90, 6, 3, 6.01)).toThrow("shoe radius must be at most the sweep's 6 in.; got 6.01 in.");
});

test("a test bend without any radius is none", () => {
  // A corner as sharp as the conduit is thick has stub and leg come to the cut length and the diameter more.
  const test = { cutLength: 30, mark: 5, stub: 10, leg: 20.74, angle: 90 };
  expect(() => measuredShoe(test, 0.75)).toThrow(
    "stub and leg must come to more than the cut length and 0.75 in. (30.75 in.)",
  );
});

test("each line of a calibration says what it is, in which unit", () => {
  const bend = { cutLength: 30, mark: 5, stub: 10, leg: 22.4228, angle: 90 };
  const lines = calibrate(bend, 0.706, { dialReached: 90, radius: 4 });
  expect(lines.map(({ quantity, unit, meaning }) => `${quantity} [${unit}]: ${meaning}`)).toEqual([
    "Radius [in.]: centerline radius of the finished bend",
    "Deduct [in.]: stub height less the arrow's mark",
    "Gain [in.]: what a 90 saves, corner to corner on the centerline",
    "Back gain [in.]: what a 90 saves, back to back",
    "Arrow lead [in.]: from the arrow to the start of the bend",
    "Star [in.]: from the arrow to the back of a finished 90",
    "Notch 30° [in.]: from the arrow to the middle of a 30",
    "Notch 45° [in.]: from the arrow to the middle of a 45",
    "Notch 60° [in.]: from the arrow to the middle of a 60",
    "Radius per degree [in.]: change of the radius above if the bend is really one degree more",
    "Springback [°]: dial reached less angle measured",
    "Stretch [in.]: how much longer the conduit became, by the radius measured",
  ]);
  // R·A/2 past the arrow's lead of 0.647, at 30° and at 60° (R 4 to the reading's four decimals).
  const value = (quantity: string) => lines.find((line) => line.quantity === quantity)!.value;
  expect(value("Notch 30°")).toBeCloseTo(0.647 + Math.PI / 3, 3);
  expect(value("Notch 60°")).toBeCloseTo(0.647 + (2 * Math.PI) / 3, 3);
  expect(value("Springback")).toBe(0);
});
