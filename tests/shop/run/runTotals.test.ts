/** Totals of a run, worked out by hand for 1/2 EMT on R 4: a 90 gains 8 − 2π. [in], [°] */
import { buildRun } from "../../../src/shop/run/buildRun";
import { pullDegrees, runBends, runDegrees, runElbows, runLength, runPoints } from "../../../src/shop/run/runTotals";
import { HALF_EMT, runOf } from "../../support/demoShoe";

const built = (route: string) => buildRun(runOf(route), HALF_EMT);
const twoPulls = () => built("up 36, east 60, box, south 48, down 30, east 25");

test("length: the legs of every pull less the gain of each bend", () => {
  expect(runLength(built("up 36, east 60"))).toBeCloseTo(96 - (8 - 2 * Math.PI), 9);
  expect(runLength(twoPulls())).toBeCloseTo(199 - 3 * (8 - 2 * Math.PI), 9);
});

test("bends: of all pulls; an offset has two, a sweep its shots", () => {
  expect(runBends(twoPulls())).toBe(3);
  expect(runBends(built("east 40, offset 6 up at 30, ahead 40"))).toBe(2);
  expect(runBends(built("up 60, sweep 24 in 9, east 60"))).toBe(9);
});

test("factory elbows are not bends to make; their length and degrees count", () => {
  const elbows = buildRun(runOf("up 36, east 60, offset 6 up at 30, ahead 40"), HALF_EMT, [90]);
  const bent = built("up 36, east 60, offset 6 up at 30, ahead 40");
  expect([runBends(elbows), runElbows(elbows), runElbows(bent)]).toEqual([2, 1, 0]);
  expect([runLength(elbows), runDegrees(elbows)]).toEqual([runLength(bent), runDegrees(bent)]);
});

test("degrees: of each pull, and the most that any of them has", () => {
  expect(pullDegrees(twoPulls()).map(Math.round)).toEqual([90, 180]);
  expect(runDegrees(twoPulls())).toBeCloseTo(180, 9);
  expect(runDegrees(built("up 20"))).toBe(0);
});

test("points: start, corners, the box once, end; east, north and up of the datum", () => {
  const [headers, ...rows] = runPoints(twoPulls());
  expect(headers).toEqual(["Point", "East", "North", "Up", "At"]);
  const rounded = rows.map((row) =>
    row.map((cell) => (typeof cell === "number" ? Math.round(cell * 1e9) / 1e9 + 0 : cell)),
  );
  expect(rounded).toEqual([
    [1, 0, 0, 0, "start"],
    [2, 0, 0, 36, "corner"],
    [3, 60, 0, 36, "box"],
    [4, 60, -48, 36, "corner"],
    [5, 60, -48, 6, "corner"],
    [6, 85, -48, 6, "end"],
  ]);
});
