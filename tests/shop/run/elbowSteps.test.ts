/** `elbow 24` in a route, and the rules of radii and straight ends. By hand; straight ends of size 4: 3.375, from memory. [in] */
import { buildRunWith } from "../../../src/shop/run/buildRun";
import { pullParts, type BuiltRun } from "../../../src/shop/run/builtRun";
import { fittingRule } from "../../../src/shop/fittings/fittingRule";
import type { Run } from "../../../src/shop/run/runsTable";
import { readShoes } from "../../../src/shop/shoe/shoeBook";
import { readRules } from "../../../src/rules/rules";
import { scheduleRun } from "../../../src/shop/schedule/schedule";
import { takeoff } from "../../../src/takeoff/lines/takeoff";
import { runOf } from "../../support/demoShoe";
import { quantityOf, runsRange } from "../../takeoff/tables";

const near = (value: number): number => expect.closeTo(value, 9) as number;
const rulesOf = (...rows: [string, string | number][]) => [["Rule", "Value"], ...rows];
const built = (route: string, cells: Partial<Run>, rules: unknown[][] = rulesOf()): BuiltRun =>
  buildRunWith(runOf(route, cells), readShoes(null), fittingRule(readRules(rules)));
const lines = ({ pulls }: BuiltRun) =>
  pulls.flatMap((pull) =>
    pullParts(pull).map((part) => ("cutLength" in part ? part.cutLength : `${part.angle}° R ${part.radius}`)),
  );
const RMC4 = { raceway: "RMC", size: "4" } as const;

test("an elbow of its own radius stands beside standard ones", () => {
  // 60 less 16 and 3.375; 90 less that and less 24 and 3.375; 60 less 27.375.
  expect(lines(built("up 60, east 90, elbow 24, up 60", RMC4))).toEqual([
    near(40.625), "90° R 16", near(43.25), "90° R 24", near(32.625),
  ]); // prettier-ignore
});

test("an elbow is bought where the shop bends the size, and the bend beside it is the shop's", () => {
  const run = built("up 40, elbow, east 60, up 40", { raceway: "EMT", size: "3/4" });
  expect(lines(run)).toEqual([near(35.5), "90° R 4.5", near(60 - 4.5 + 40 - 2 * 4.5 + (Math.PI / 2) * 4.5)]);
  expect(scheduleRun(run).map(({ Kind }) => Kind)).toEqual(["straight", "factory elbow", "90"]);
});

test("an elbow does not change when another bend of the run is made in the shop", () => {
  const shoes = readShoes([
    ["Raceway", "Size", "Radius", "Deduct"],
    ["RMC", "4", 30, 35],
  ]);
  const rules = fittingRule(
    readRules(rulesOf(["Factory elbows above size, metal", "3"], ["Factory elbow angles", 90])),
  );
  const elbow = (route: string) => buildRunWith(runOf(route, RMC4), shoes, rules).pulls[0]!.elbows[0]!;
  const [alone, beside] = [elbow("up 60, east 90"), elbow("up 60, east 90, bend 20 up, ahead 60")];
  expect([alone.radius, alone.straight]).toEqual([16, { end: 3.375, before: 3.375, after: 3.375 }]);
  expect([beside.radius, beside.straight]).toEqual([alone.radius, alone.straight]);
});

test("radius and straight ends by raceway and size: the nearest entry counts, the word leaves the usual", () => {
  const own = rulesOf(["Factory elbow radius", "4: 24; RMC: 30; RMC 4: 36"], ["Factory elbow straight ends", "RMC: 5"]);
  const elbow = (cells: Partial<Run>, rules = own) => {
    const [{ radius, straight }] = built("up 90, east 90", cells, rules).pulls[0]!.elbows as [never];
    return [radius, (straight as { end: number }).end];
  };
  expect(elbow(RMC4)).toEqual([36, 5]);
  expect(elbow({ raceway: "RMC", size: "3" })).toEqual([30, 5]);
  expect(elbow({ raceway: "PVC 40", size: "4" })).toEqual([24, 3.375]);
  expect(elbow({ raceway: "PVC 40", size: "3" })).toEqual([13, 3.125]);
  expect(elbow({ raceway: "EMT", size: "4" })).toEqual([24, 0]);
  expect(elbow(RMC4, rulesOf(["Factory elbow radius", "Standard"]))).toEqual([16, 3.375]);
});

test.each([
  ["up 60, elbow 12, east 90", 'the radius of an elbow of RMC 4 must be at least 16 in. (NEC chapter 9, table 2); got 12 in.'],
  ["up 60, elbow, bend 37 east, ahead 60", "step 2: there is no factory elbow of 37°, only of 90°, 60°, 45°, 30°, 22.5°, 15°, 11.25° (rule Factory elbow angles)."],
  ["up 60, elbow 24", 'the route ends with step 2; expected a change of direction first, for the elbow of step 2.'],
  ["up 60, elbow 24, offset 6 east at 30, ahead 60", "expected a change of direction first, for the elbow of step 2."],
  ["up 60, elbow 24, sweep 30, east 90", "expected a change of direction first, for the elbow of step 2."],
  ["up 60, elbow none, east 90", "step 2: elbow radius"],
])("%s is refused in words", (route, words) => {
  expect(() => built(route, RMC4)).toThrow(words);
}); // prettier-ignore

test("a rule below the code's radius is refused where a run has such elbows", () => {
  const rules = rulesOf(["Factory elbow radius", 12]);
  expect(() => built("up 60, east 90", RMC4, rules)).toThrow("Factory elbow radius of RMC 4 must be at least 16 in.");
  expect(lines(built("up 60, east 90", { raceway: "PVC 40", size: "2" }, rules))).toContain("90° R 12");
});

test("the take-off has an elbow of another radius as an item of its own", () => {
  const table = takeoff(
    runsRange({ Run: "A", Raceway: "RMC", Size: "4", Route: "up 60, east 90, elbow 24, up 90, elbow 24, east 90" }),
  );
  expect(quantityOf(table, "RMC 4 90° elbow")).toBe(1);
  expect(quantityOf(table, "RMC 4 90° elbow, 24 in. radius")).toBe(2);
});
