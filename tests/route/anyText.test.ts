import fc from "fast-check";
import { pathProblems } from "../../src/route/problems";
import { readRoute } from "../../src/route/text/readRoute";
import { resolveRoute } from "../../src/route/resolveRoute";
import { InputError } from "../../src/units/errors";

const word = fc.constantFrom(
  ..."up down north south east west ahead to bend kick offset box saddle sweep elbow stub over at in and back shots".split(
    " ",
  ),
  ...["4", "40", "6.5", "1/2", "3' 4-1/2\"", "30", "45", "90", "0", "-20", "", ",", ",", ";", "\n", "°", "½", "x"],
);
const text = fc.oneof(
  fc.array(word, { maxLength: 40 }).map((words) => words.join(" ")),
  fc.string({ unit: "grapheme", maxLength: 60 }),
);

/** The error's message, or undefined when the text makes a route that resolves. */
function refusal(route: string): string | undefined {
  try {
    resolveRoute(readRoute(route), 4, 0.7).pulls.forEach((pull) => pathProblems(pull));
    return undefined;
  } catch (error) {
    if (error instanceof InputError) return error.message;
    throw error;
  }
}

test("any text is read, or refused in words that begin with the step or the route", () => {
  fc.assert(
    fc.property(text, (route) => {
      expect(refusal(route) ?? "route").toMatch(/^(step \d+: |the route ends with step \d+; |route)/);
    }),
    { numRuns: 3000 },
  );
});

test("nothing a route comes to is not a number", () => {
  fc.assert(
    fc.property(text, (route) => {
      if (refusal(route) !== undefined) return;
      const { pulls } = resolveRoute(readRoute(route), 4, 0.7);
      expect(pulls.flatMap(({ points }) => points.flat()).every(Number.isFinite)).toBe(true);
    }),
    { numRuns: 3000 },
  );
});

test("a route as long as allowed, of the steps that take the longest to tell apart, is read or refused", () => {
  const step = `offset ${"up at ".repeat(18)}`;
  const route = Array(34).fill(step).join(",");
  expect(route.length).toBeLessThanOrEqual(4000);
  expect(refusal(route)).toMatch(/^step 1: /);
  expect(refusal(Array(250).fill("east 40, up 9").join(","))).toBeUndefined();
});
