/** What is laid by hand, and raceways whose bends are bought or bent like RMC. Lengths by hand: legs less 2R, and a quarter circle. */
import { racewayData } from "../../../src/raceway/racewayData";
import { buildJob, isBuilt } from "../../../src/shop/job/job";
import { checkJob } from "../../../src/shop/checks/checks";
import { scheduleJob } from "../../../src/shop/schedule/schedule";
import { ticketsOf } from "../../../src/shop/ticket/ticket";
import { jobBends, jobTakeoff } from "../../../functions/job/takeoff";
import { jobCutsOf } from "../../../functions/job/cuts";

const HEAD = ["Run", "Raceway", "Size", "Route", "Quantity", "Where", "Conductors", "Breaker", "Temperature change"];
type Cells = readonly (string | number)[];
const rows = (...runs: Cells[]) => [
  HEAD,
  ...runs.map((run) => [...run, ...Array<string>(HEAD.length - run.length).fill("")]),
];
const FLEX: Cells = ["W-1", "FMC", "1-1/4", "up 24, east 36", 3];
/** Chapter 9, table 2, other bends: 8 in. for 1-1/4 (one-shot would be 7.25). */
const QUARTER = 24 + 36 - 2 * 8 + 4 * Math.PI;

const findings = (...runs: Cells[]) => {
  const job = buildJob({ runs: rows(...runs) });
  return checkJob(job, 2023).map(({ rule, finding }) => `${rule}: ${finding}`);
};

test("flex is measured along its curves and has one line without a mark", () => {
  const [row, ...rest] = scheduleJob(buildJob({ runs: rows(FLEX) }));
  expect(rest).toEqual([]);
  expect(row!["Cut length"]).toBeCloseTo(QUARTER, 9);
  expect(row).toMatchObject({ Kind: "laid by hand", Mark: "", Angle: "", Dial: "" });
  expect(row!.Note).toBe("not bent on a shoe; its pull turns 90°, at 8 in. radius or more");
});

test("its take-off has feet, connectors and straps, and neither sticks nor bends", () => {
  const [, ...lines] = jobTakeoff(rows(FLEX)) as Cells[];
  // 56.6 in.: straps 12 in. from each end and 54 in. apart at most: two a run.
  expect(lines.map(([item, unit, quantity]) => [item, unit, Number(Number(quantity).toFixed(6))])).toEqual([
    ["FMC 1-1/4 conduit", "ft", Number(((3 * QUARTER) / 12).toFixed(6))],
    ["FMC 1-1/4 flex connector", "each", 6],
    ["FMC 1-1/4 strap", "each", 6],
  ]);
  const [, ...priced] = jobTakeoff(rows(FLEX), [
    ["Item", "Unit", "Price"],
    ["FMC 1-1/4 conduit", "ft", 2],
  ]) as Cells[];
  expect(priced[0]).toEqual(expect.arrayContaining([2]));
  expect(JSON.stringify(jobBends(rows(FLEX)))).not.toContain("FMC");
  expect(jobCutsOf(rows(FLEX))).toHaveLength(1);
});

test("a long one is one length: coils have no sticks", () => {
  const job = buildJob({ runs: rows(["W-2", "LFMC", "1/2", "up 24, east 400, north 60", 1]) });
  const built = job.rows.filter(isBuilt)[0]!.built;
  expect(built.pulls[0]!.pieces.map(({ cutLength }) => cutLength)).toEqual([
    expect.closeTo(484 - 4 * 4 + 4 * Math.PI, 9),
  ]);
  expect(ticketsOf(built)).toMatchObject([{ sawnEnds: "trim them", bends: [] }]);
});

test("a sweep is one curve of its radius", () => {
  const [row] = scheduleJob(buildJob({ runs: rows(["W-3", "LFNC-B", "1", "up 24, sweep 10, east 36", 1]) }));
  expect(row!["Cut length"]).toBeCloseTo(60 - 20 + 5 * Math.PI, 9);
});

test.each([
  [["W-4", "FMC", "1", "up 24, elbow, east 36", 1], "step 2: FMC is laid by hand: it has no elbows."],
  [
    ["W-5", "FMC", "1", "up 24, sweep 4, east 36", 1],
    "348.24(A): step 2: a curve of 4 in. radius; FMC 1 needs at least 6 in.",
  ],
  [["W-6", "FMC", "1", "up 24, east 36", 1, "wet"], "348.12: FMC may not be in a wet place."],
  [["W-7", "FMC", "1", "up 24, east 36", 1, "buried"], "348.12: FMC may not be buried."],
  [["W-8", "ENT", "1", "up 24, east 36", 1, "buried"], "362.12: ENT may not be buried."],
  [
    ["W-9", "LFMC", "1", "up 24, east 36, down 20, west 30, up 20, east 30", 1],
    "350.24(B): the run turns 450° between pull points",
  ],
  [["A-1", "ENT", "1/2", "up 24, east 36", 1, "", "2 #12 THHN", 20], "ENT cannot serve as one"],
  [
    ["A-2", "FMC", "1/2", "up 24, east 36", 1, "", "2 #12 THHN", 20],
    "FMC may serve as one only in short lengths that do not move (250.118)",
  ],
  [["A-3", "RTRC", "2", "up 40, east 90", 1, "", "3 #2 THHN"], "No area is listed for RTRC 2"],
  [["A-4", "Stainless RMC", "1", "up 40, east 90", 1, "", "", "", 100], "no expansion is listed for Stainless RMC"],
])("%j: %s", (run, said) => expect(findings(run).join("\n")).toContain(said));

test("steel RMC says nothing of ground, places or expansion there", () => {
  const told = findings(["A-5", "RMC", "1", "up 40, east 90", 1, "wet", "2 #12 THWN", 20, 40]).join("\n");
  expect(told).not.toMatch(/serve as one|may not be|no expansion/);
});

test("a shoe for flex is told in words", () => {
  const job = buildJob({
    runs: rows(FLEX),
    shoes: [
      ["Raceway", "Size", "Radius", "Deduct"],
      ["FMC", "1", 6, 8],
    ],
  });
  expect(job.shoes.problems[0]!.message).toBe(
    "shoes row 2: FMC is laid by hand and not bent on a shoe; leave the row out.",
  );
});

test("RTRC buys its bends, of the standard radius; aluminum and stainless are bent like RMC", () => {
  const job = buildJob({
    runs: rows(
      ["A-6", "RTRC", "2", "up 40, east 90", 1],
      ["A-7", "Aluminum RMC", "1", "up 40, east 90", 1],
      ["A-8", "Stainless RMC", "1", "up 40, east 90", 1],
      ["A-9", "RMC", "1", "up 40, east 90", 1],
    ),
  });
  const [plastic, ...metal] = job.rows.filter(isBuilt).map(({ built }) => built);
  expect(plastic!.pulls[0]!.elbows).toMatchObject([{ radius: 9.5, angle: 90 }]);
  const bends = metal.map(({ pulls, shoe }) => [pulls[0]!.pieces[0]!.bends.length, shoe.radius, shoe.deduct]);
  expect(bends).toEqual([bends[2], bends[2], bends[2]]);
  expect(racewayData("Aluminum RMC", "1", "weight")).toBe(53);
});
