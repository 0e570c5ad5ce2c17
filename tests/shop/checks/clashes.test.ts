/** Runs that take the same place, against places worked out by hand. EMT 1/2 is 0.706 in. thick (ANSI C80.3), EMT 1 1.163. */
import { buildJob } from "../../../src/shop/job/job";
import { checkJob } from "../../../src/shop/checks/checks";
import { clashesOf, clashFindings, MOST_CLASHES } from "../../../src/shop/checks/clashes";
import { readEdition } from "../../../src/raceway/code/edition";
import { runsRange } from "../../takeoff/tables";

type Cells = [name: string, route: string, start: string, more?: Record<string, string | number>];
const jobOf = (...runs: Cells[]) =>
  buildJob({ runs: runsRange(...runs.map(([Run, Route, Start, more]) => ({ Run, Route, Start, ...more }))) });
const pairs = (...runs: Cells[]) => clashesOf(jobOf(...runs)).clashes.map(({ one, other }) => `${one.run.name} ${other.run.name}`); // prettier-ignore

test("a run that passes through another: where, how far along both, by how much", () => {
  const job = jobOf(["A", "east 100", "0 0 10"], ["B", "north 80", "40 -50 10.3", { Size: "1" }]);
  const [clash, ...others] = clashesOf(job).clashes;
  expect(others).toEqual([]);
  expect(clash).toMatchObject({ alongOne: 40, alongOther: 50, point: [40, 0, 10.15] });
  expect(clash!.apart).toBeCloseTo(0.3, 9);
  expect(clash!.needed).toBeCloseTo((0.706 + 1.163) / 2, 9);
  expect(clashFindings(job)).toEqual([
    {
      run: "A",
      weight: "stop",
      rule: "two runs must not take the same place",
      finding:
        "3' 4\" along it, at 40 in., 0 in., 10.15 in. east, north and up, it comes within 0.3 in. of B (4' 2\" along that), " +
        "center to center; the two conduits need 0.93 in.: 0.63 in. too near.",
      fix: "Move one of them: its legs, or its Start.",
    },
  ]);
});

test("Checks names them; a job without them says nothing of it", () => {
  const edition = readEdition(undefined);
  const rules = (...runs: Cells[]) => checkJob(jobOf(...runs), edition).map(({ rule }) => rule);
  const rule = "two runs must not take the same place";
  expect(rules(["A", "east 100", "0 0 10"], ["B", "north 80", "40 -50 10"])).toContain(rule);
  expect(rules(["A", "east 100", "0 0 10"], ["B", "north 80", "40 -50 11"])).not.toContain(rule);
});

describe("what is no clash", () => {
  test.each<[string, Cells[]]>([
    ["runs that touch", [["A", "east 100", "0 0 0"], ["B", "east 100", "0 0.706 0"]]],
    ["runs without a Start, wherever they would lie", [["A", "east 100", ""], ["B", "east 100", ""]]],
    ["one with a Start and one without", [["A", "east 100", "0 0 0"], ["B", "east 100", ""]]],
    ["runs that meet at a box", [["A", "east 100", "0 0 0"], ["B", "north 80", "100 0 0"]]],
    ["runs that begin at one box", [["A", "east 100", "0 0 0"], ["B", "west 80", "0 0 0"]]],
    ["a bend round a run in its corner", [["A", "up 60, east 60", "0 0 0"], ["B", "north 80", "0 -40 60"]]],
  ])("%s", (_, runs) => {
    expect(pairs(...runs)).toEqual([]);
  }); // prettier-ignore
});

describe("what is one", () => {
  test.each<[string, Cells[]]>([
    ["runs a sixteenth nearer than touching", [["A", "east 100", "0 0 0"], ["B", "east 100", "0 0.643 0"]]],
    ["runs that begin at one box and lie on each other", [["A", "east 100", "0 0 0"], ["B", "east 80", "0 0 0"]]],
    // The arc of a 4 in. 90 is nearest its corner at 4·(√2 − 1) = 1.657 in.: 1.1716 in. east and down of it.
    ["a run through the middle of an arc", [["A", "up 60, east 60", "0 0 0"], ["B", "north 80", "1.1716 -40 58.8284"]]],
    ["a run through the second pull of another", [["A", "east 60, box, north 60", "0 0 0"], ["B", "up 40", "60 30 -20"]]],
  ])("%s", (_, runs) => {
    expect(pairs(...runs)).toEqual(["A B"]);
  }); // prettier-ignore
});

test("how far along goes through the boxes of a run", () => {
  const { clashes } = clashesOf(jobOf(["A", "east 60, box, north 60", "0 0 0"], ["B", "up 40", "60 30 -20"]));
  expect(clashes[0]).toMatchObject({ alongOne: 90, alongOther: 20 });
});

test("a moved run is compared anew, a row that cannot be built hides no other", () => {
  const crossing: Cells = ["B", "north 80", "40 -50 10"];
  expect(pairs(["A", "east 100", "0 0 10"], crossing, ["C", "what", "0 0 0"])).toEqual(["A B"]);
  expect(pairs(["A", "east 100", "0 0 20"], crossing)).toEqual([]);
  expect(pairs(crossing, ["A", "east 100", "0 0 10"])).toEqual(["B A"]);
});

test("more than a person would read are told as more", () => {
  const count = 40;
  const runs = Array.from({ length: count }, (_, index): Cells => [`R${index}`, "east 100", "0 0 0"]);
  expect((count * (count - 1)) / 2).toBeGreaterThan(MOST_CLASHES);
  const findings = clashFindings(jobOf(...runs));
  expect(findings).toHaveLength(MOST_CLASHES + 1);
  expect(findings.at(-1)!.finding).toMatch(/^More than 500 pairs of runs/);
});
