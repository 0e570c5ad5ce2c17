/** What is said of bends without room: the angle that would do, worked out by hand. */
import { buildRun } from "../../../src/shop/run/buildRun";
import { HALF_EMT, runOf } from "../../support/demoShoe";

/** The shoe without springback, so that its radius of 4 holds at every angle. */
const SHOE = { ...HALF_EMT, springback: 0 };

function mistake(route: string): string {
  try {
    buildRun(runOf(route), SHOE);
  } catch (error) {
    return (error as Error).message;
  }
  return "";
}

// Derived: an offset of rise h has h / sin A between its corners and needs 2 R tan(A/2); both are as long at
// cos A = 1 - h / (2 R). With R 4 and h 2 that is 41.41°, with h 1.7 it is 38.05°.
test.each([
  ["up 20, offset 2 east at 60, ahead 20", "At most 41° in step 2 would do."],
  ["up 20, offset 1.7 east at 45, ahead 20", "At most 38° in step 2 would do."],
])("%s", (route, words) => {
  expect(mistake(route)).toMatch(/short\. /);
  expect(mistake(route)).toContain(words);
  const [, angle] = /(\d+)° in step/.exec(words)!;
  expect(mistake(route.replace(/at \d+/, `at ${angle}`))).toBe("");
  expect(mistake(route.replace(/at \d+/, `at ${Number(angle) + 1}`))).not.toBe("");
});

test("a saddle that takes the whole of a leg is told the angle from which it does not", () => {
  // Derived: a four-bend saddle takes over / 2 + R tan(A/2) + h / tan A; 6 + 1.0718 + 6.9282 = 14 at 30°, and the bend
  // outside takes its setback too. Of 13 in. no more than 13 - R tan(A/2) may be taken.
  const route = (angle: number) => `up 13, saddle 4 east over 12 at ${angle}, ahead 40`;
  const takes = (angle: number) =>
    6 + (2 * 4 * Math.tan((angle * Math.PI) / 360) + 4 / Math.tan((angle * Math.PI) / 180));
  const least = Array.from({ length: 60 }, (_, place) => 31 + place).find((angle) => takes(angle) <= 13)!;
  expect([takes(53), takes(54)].map((inches) => inches > 13)).toEqual([true, false]);
  expect(mistake(route(30))).toContain(`At least ${least}° in step 2 would do.`);
});

test("where no angle would do, none is named", () => {
  expect(mistake("up 20, offset 0.01 east at 45, ahead 20")).not.toMatch(/would do/);
  expect(mistake("up 3, east 40")).not.toMatch(/would do/);
});
