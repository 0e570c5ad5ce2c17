import { buildJob } from "../../../src/shop/job/job";
import { checkJob } from "../../../src/shop/checks/checks";
import { readEdition } from "../../../src/raceway/code/edition";

const findings = (names: readonly string[]) =>
  checkJob(
    buildJob({
      runs: [["Run", "Raceway", "Size", "Route"], ...names.map((name) => [name, "EMT", "1/2", "up 40, east 60"])],
    }),
    readEdition(undefined),
  );

test("a row without a name is said by its row of the range, the header being row 1", () => {
  const [found] = findings(["A-1", "", "A-3"]).filter(({ rule }) => rule === "a run has a name");
  expect(found).toMatchObject({ run: "row 3", weight: "look" });
  expect(found!.finding).toMatch(/^row 3 has nothing under Run;/);
});

test("rows with names are not said", () => {
  expect(findings(["A-1", "A-2"]).filter(({ rule }) => /name/.test(rule))).toEqual([]);
});

test("a name that stands twice is said once", () => {
  const found = findings(["A-1", "A-1", "A-2"]).filter(({ rule }) => rule === "a run's name stands once");
  expect(found.map(({ run, finding }) => [run, finding])).toEqual([
    ["A-1", "2 rows are named A-1; their pieces cannot be told apart on the bench."],
  ]);
});
