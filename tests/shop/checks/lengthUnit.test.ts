/** One rule says in what lengths are told, wherever a job tells one. Expected by hand: 1 in. is 25.4 mm. */
import { readEdition } from "../../../src/raceway/code/edition";
import { checkJob } from "../../../src/shop/checks/checks";
import { buildJob } from "../../../src/shop/job/job";
import { scheduleJob } from "../../../src/shop/schedule/schedule";
import { setupTable } from "../../../src/shop/bench/setupTable";
import { readBench } from "../../../src/shop/bench/bench";
import { jobCuts } from "../../../src/takeoff/reports/jobCuts";
import { LENGTH_UNITS, type LengthUnit } from "../../../src/units/formatLength";

const runs = (route: string) => [
  ["Run", "Raceway", "Size", "Route"],
  ["A-1", "EMT", "1/2", route],
];
const shoes = [
  ["Raceway", "Size", "Radius", "Deduct", "Springback", "Shortest tail"],
  ["EMT", "1/2", 4, 5, 0, 2],
];
const rules = (unit: unknown) => [
  ["Rule", "Value"],
  ["Lengths shown in", unit],
];
const jobIn = (unit: unknown, route: string) => buildJob({ runs: runs(route), shoes, rules: rules(unit) });
const findingIn = (unit: LengthUnit, route: string): string =>
  checkJob(jobIn(unit, route), readEdition(null)).find(({ run }) => run === "A-1")!.finding;

// Two 90s on R 4 need 8 in. of a leg of 7.5.
test.each<[LengthUnit, string, string]>([
  [
    "as written",
    "up 40, east 7.5, north 40",
    "is 7.5 in. long, but its bends need 8 in. for their setbacks: 0.5 in. short.",
  ],
  [
    "inches",
    "up 40, east 7.5, north 40",
    "is 7.5 in. long, but its bends need 8 in. for their setbacks: 0.5 in. short.",
  ],
  ["feet", "up 40, east 7.5, north 40", `is 7-1/2" long, but its bends need 8" for their setbacks: 1/2" short.`],
  [
    "mm",
    "up 40, east 7.5, north 40",
    "is 190.5 mm long, but its bends need 203.2 mm for their setbacks: 12.7 mm short.",
  ],
  // The person's own words go before the choice.
  [
    "feet",
    "up 1 m, east 0.1905 m, north 1 m",
    "is 0.191 m long, but its bends need 0.203 m for their setbacks: 0.013 m short.",
  ],
])("in %s, %s", (unit, route, words) => {
  expect(findingIn(unit, route)).toContain(words);
});

test("schedule, bench and cutting plan tell lengths in the same unit; the numbers stay inches", () => {
  const all = LENGTH_UNITS.map((unit) => {
    const job = jobIn(unit, "up 45, east 30, up 50");
    const [first] = scheduleJob(job);
    const verdicts = setupTable(job, readBench(null)).map((row) => String(row.at(-1)));
    const [, , cut] = jobCuts(runs("up 45, east 30"), { shoes, rules: rules(unit) });
    return { number: first!["Cut length"], text: first!["Cut 1/16"], verdict: verdicts[1], cut: cut![3] };
  });
  // Legs 45 + 30 + 50 less two gains of 8 - 2π = 121.566 in.; one leg shorter 73.283 in., cut to the sixteenth.
  const length = 125 - 2 * (8 - 2 * Math.PI);
  for (const { number } of all) expect(number).toBeLessThan(length);
  expect(all.map(({ number }) => number)).toEqual(all.map(() => all[0]!.number));
  expect(all.map(({ text }) => /' .*"$/.test(String(text)))).toEqual([true, true, false, false]);
  expect(all[3]!.text).toBe(`${Math.round(Number(all[3]!.number) * 25.4)} mm`);
  expect(all.map(({ verdict }) => / mm\b/.test(verdict!))).toEqual([false, false, false, true]);
  expect(all.map(({ cut }) => cut)).toEqual(['120"', "10' 0\"", '120"', "3048 mm"]);
});

test("a unit that is none is told, and the built-in one stays", () => {
  const job = jobIn("cubits", "up 40, east 60");
  expect(job.rules.problems).toEqual([
    'rules row 2: "Lengths shown in" must be as written, feet, inches or mm; got "cubits".',
  ]);
});
