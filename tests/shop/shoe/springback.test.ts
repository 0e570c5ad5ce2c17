/** Springback of a shoe at every angle: the line of BEND.SPRINGBACK, and the radius that release leaves. [in], [°] */
import { bendDial, bendReleased, bendSpringback } from "../../../functions/bend/bends";
import { jobSchedule, jobSetup } from "../../../functions/job/jobs";
import { runMarks } from "../../../functions/job/runs";
import { jobChecks } from "../../../functions/job/jobs";
import { readSecondTest, secondTestCell } from "../../../src/shop/shoe/secondTest";
import { readShoes } from "../../../src/shop/shoe/shoeBook";
import { radiusOf, springbackOf } from "../../../src/shop/shoe/springback";

const HEADERS = ["Raceway", "Size", "Radius", "Deduct", "Springback", "Second test"];
const TESTS = [
  ["Angle", "Dial"],
  [90, 95],
  [30, 32.5],
];
const SHOES = [HEADERS, ["EMT", "1/2", 4, 5, 5, "30 at 32.5"]];

test("one test bend: springback in proportion, and the same radius at every angle", () => {
  const shoe = { radius: 16, springback: 5 };
  // A sweep of 20 shots in RMC 4: each of 4.5° springs back 5·4.5/90 = 0.25°.
  expect(springbackOf(shoe, 4.5)).toBeCloseTo(0.25, 12);
  expect(radiusOf(shoe, 4.5)).toBe(16);
});

test("a sweep of 20 shots dials each shot's own springback, not a 90's", () => {
  const shoes = [HEADERS.slice(0, 5), ["RMC", "4", 16, 20, 5]];
  const marks = runMarks("east 80, sweep 48 in 20, up 80", "RMC", "4", shoes);
  const dials = marks.slice(1).flatMap((row) => (row[3] === "" ? [] : [row[9]]));
  expect(dials).toEqual(Array.from({ length: 20 }, () => 4.75));
});

test("two tests: dial and radius of schedule and set-up are what the functions give, to the last digit", () => {
  const runs = [
    ["Run", "Raceway", "Size", "Route"],
    ["A-1", "EMT", "1/2", "up 40, east 60, offset 6 up at 45, ahead 60"],
  ];
  const dial = (angle: number) => bendDial(angle, bendSpringback(angle, TESTS));
  const column = (table: unknown[][], name: string) => table.slice(1).map((row) => row[(table[0] as string[]).indexOf(name)]).filter((cell) => cell !== ""); // prettier-ignore
  expect(column(jobSchedule(runs, SHOES), "Dial")).toEqual([dial(90), dial(45), dial(45)]);
  // The set-up has another order.
  expect(column(jobSetup(runs, SHOES), "Dial").sort()).toEqual([dial(45), dial(45), dial(90)]);
  // The tool's radius by hand: a 90 of 4 in. was 4·90/95 while it was held.
  const shoe = readShoes(SHOES).shoeFor("EMT", "1/2");
  expect(radiusOf(shoe, 45)).toBeCloseTo(bendReleased((4 * 90) / 95, 45, bendSpringback(45, TESTS)), 12);
  expect(radiusOf(shoe, 90)).toBeCloseTo(4, 12);
});

test("an angle the tests do not reach has words for a dial, and stops the run; its radius is the nearest tested one's", () => {
  const runs = [
    ["Run", "Raceway", "Size", "Route"],
    ["A-1", "EMT", "1/2", "east 40, offset 6 up at 10, ahead 60"],
  ];
  expect(jobSchedule(runs, SHOES)[1]![9]).toBe("not tested");
  const found = jobChecks(runs, SHOES).find(([, , rule]) => rule === "a test bend must tell the springback");
  expect(found?.slice(0, 2)).toEqual(["A-1", "stop"]);
  expect(found?.[3]).toContain("a bend of 10°: angle must lie within 15° of the tested angles, 15° to 105°; got 10°.");
  const shoe = readShoes(SHOES).shoeFor("EMT", "1/2");
  expect(radiusOf(shoe, 10)).toBe(radiusOf(shoe, 15));
});

test.each([
  ["30 at 32.5", { angle: 30, springback: 2.5 }],
  ["30°, dial 32.5°", { angle: 30, springback: 2.5 }],
  ["45 45", { angle: 45, springback: 0 }],
  [secondTestCell(22.5, 24), { angle: 22.5, springback: 1.5 }],
])("a second test of %p is read", (cell, test) => expect(readSecondTest(cell)).toEqual(test));

test.each([
  [30, "Second test must be the angle a bend settled at and the dial it was taken to"],
  ["about thirty", "as in 30 at 31.5; got"],
  ["30 at 29", "Second test's dial must be at least 30° and at most 75°; got 29°."],
  ["0 at 4", "Second test's angle must be above 0° and below 180°; got 0°."],
  ["90.5 at 95", "tests must stand at angles at least 1° apart"],
])("a second test of %p is refused in its row", (cell, message) => {
  const { problems } = readShoes([HEADERS, ["EMT", "1/2", 4, 5, 5, cell]]);
  expect(problems[0]!.message).toMatch(/^shoes row 2: /);
  expect(problems[0]!.message).toContain(message);
});
