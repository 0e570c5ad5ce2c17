/** A test bend simulated with a known shoe must give the shoe back. Lengths [in], angles [°]. */
import fc from "fast-check";
import { calibrate } from "../../src/bends/testBends/calibrate";
import { measuredShoe, stretch, type TestBend } from "../../src/bends/testBends/testBend";
import { placeAt } from "../support/bentLine";

/** Half an inch's thirty-second: what a reading to the nearest 1/16 in. may be off. */
const HALF = 1 / 32;

/** Bends a stick in a known shoe and measures it: stub and leg to where the lines along both backs meet. */
function bendTest(radius: number, lead: number, outsideDiameter: number, angle: number): TestBend {
  const [mark, cutLength] = [5.0625, 30.375];
  const bends = [{ start: mark + lead, angle, radius }];
  const end = placeAt(bends, cutLength);
  const turn = (angle * Math.PI) / 180;
  // The leg's back lies OD/2 to the right of its centerline, the stub's along y = −OD/2.
  const back = { x: end.x + (outsideDiameter / 2) * Math.sin(turn), y: end.y - (outsideDiameter / 2) * Math.cos(turn) };
  const leg = (back.y + outsideDiameter / 2) / Math.sin(turn);
  return { cutLength, mark, stub: back.x - leg * Math.cos(turn), leg, angle };
}

test("radius, deduct, star and notches of a known shoe come back", () => {
  fc.assert(
    fc.property(
      fc.double({ min: 2, max: 9, noNaN: true }),
      fc.double({ min: -1, max: 2, noNaN: true }),
      fc.double({ min: 0.5, max: 2.5, noNaN: true }),
      fc.double({ min: 80, max: 100, noNaN: true }),
      (radius, lead, outsideDiameter, angle) => {
        const shoe = measuredShoe(bendTest(radius, lead, outsideDiameter, angle), outsideDiameter);
        const backGain = 2 * (radius + outsideDiameter / 2) - (Math.PI * radius) / 2;
        expect(shoe.radius).toBeCloseTo(radius, 8);
        expect(shoe.arrowLead).toBeCloseTo(lead, 8);
        expect(shoe.deduct).toBeCloseTo(lead + radius + outsideDiameter / 2, 8);
        expect(shoe.backGain).toBeCloseTo(backGain, 8);
        expect(shoe.gain).toBeCloseTo((2 - Math.PI / 2) * radius, 8);
        expect(shoe.starFromArrow).toBeCloseTo(lead + radius + outsideDiameter / 2 - backGain, 8);
        expect(shoe.notch30).toBeCloseTo(lead + (radius * Math.PI) / 12, 8);
        expect(shoe.notch45).toBeCloseTo(lead + (radius * Math.PI) / 8, 8);
        expect(shoe.notch60).toBeCloseTo(lead + (radius * Math.PI) / 6, 8);
      },
    ),
    { numRuns: 50 },
  );
});

test("the shoe worked out by hand: R 4, OD 0.706, deduct 5", () => {
  const lines = calibrate(bendTest(4, 0.647, 0.706, 90), 0.706, { dialReached: 94, radius: 4 });
  const value = (quantity: string) => lines.find((line) => line.quantity === quantity)?.value;
  expect(value("Radius")).toBeCloseTo(4, 9);
  expect(value("Deduct")).toBeCloseTo(5, 9);
  expect(value("Arrow lead")).toBeCloseTo(0.647, 9);
  expect(value("Star")).toBeCloseTo(2.577185, 6);
  expect(value("Notch 45°")).toBeCloseTo(2.217796, 6);
  expect(value("Springback")).toBe(4);
  expect(value("Stretch")).toBeCloseTo(0, 9);
});

/** Every reading half a division off, each way: the largest change of a result, by trying all sixteen. */
function worstOfAll(test: TestBend, result: (test: TestBend) => number): number {
  const changes = Array.from({ length: 16 }, (_, bits) => {
    const off = (place: number) => ((bits >> place) & 1 ? HALF : -HALF);
    const moved = {
      ...test,
      cutLength: test.cutLength + off(0),
      mark: test.mark + off(1),
      stub: test.stub + off(2),
      leg: test.leg + off(3),
    };
    return Math.abs(result(moved) - result(test));
  });
  return Math.max(...changes);
}

test("worst errors are the worst of all readings half a division off, standard errors what random readings scatter", () => {
  const test = bendTest(4, 0.647, 0.706, 90);
  const lines = calibrate(test, 0.706);
  const names = { Radius: "radius", Deduct: "deduct", Star: "starFromArrow", "Notch 45°": "notch45" } as const;
  for (const [quantity, name] of Object.entries(names)) {
    const line = lines.find((one) => one.quantity === quantity);
    expect(line?.worst).toBeCloseTo(
      worstOfAll(test, (moved) => measuredShoe(moved, 0.706)[name]),
      9,
    );
  }
  const radius = lines[0];
  // By hand: three readings over 2 − π/2; a reading within ±1/32 in. has a standard deviation of 1/16/√12.
  expect(radius?.worst).toBeCloseTo(3 / 32 / (2 - Math.PI / 2), 9);
  expect(radius?.standard).toBeCloseTo((Math.sqrt(3) * (1 / 16 / Math.sqrt(12))) / (2 - Math.PI / 2), 9);
  expect(lines.find((line) => line.quantity === "Deduct")?.worst).toBeCloseTo(1 / 16, 9);
});

test("a degree more changes the radius as bending it again does", () => {
  const measured = bendTest(4, 0.647, 0.706, 90);
  const line = calibrate(measured, 0.706).find((one) => one.quantity === "Radius per degree");
  expect(line?.value).toBeCloseTo(measuredShoe({ ...measured, angle: 91 }, 0.706).radius - 4, 9);
  expect(line?.value).toBeLessThan(-0.1);
});

test("a stretched conduit shows by how much", () => {
  const measured = bendTest(4, 0.647, 0.706, 90);
  expect(stretch({ ...measured, cutLength: measured.cutLength - 0.125 }, 0.706, 4)).toBeCloseTo(0.125, 9);
});

test("measures that do not belong to a bend are refused", () => {
  const measured = { cutLength: 30, mark: 5, stub: 10, leg: 20.5, angle: 90 };
  expect(() => measuredShoe(measured, 0.706)).toThrow(
    "stub and leg must come to more than the cut length and 0.706 in. (30.706 in.); got 30.5 in. Measure again, end to back.",
  );
  expect(() => calibrate(bendTest(4, 0.6, 0.7, 90), 0.7, { dialReached: 88 })).toThrow(
    "dial reached must be at least the angle measured (90°); got 88°.",
  );
});
