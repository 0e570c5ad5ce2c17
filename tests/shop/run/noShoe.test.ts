import { checkJob } from "../../../src/shop/checks/checks";
import { buildJob } from "../../../src/shop/job/job";
import { takeoff } from "../../../src/takeoff/lines/takeoff";
import { records, runsRange } from "../../takeoff/tables";

/** 2 in. EMT has no built-in shoe. */
const big = { Run: "F-1", Raceway: "EMT", Size: "2", From: "Panel A", To: "JB-1", Conductors: "3 #6 THHN" };

test("a size that no shoe is listed for is counted: its bends as factory elbows, and a finding says how to change it", () => {
  const runs = runsRange({ ...big, Route: "up 8', east 20'" });
  const order = records(takeoff(runs));
  const of = (item: string) => order.find(({ Item }) => Item === item)?.["Quantity"];
  expect(of("EMT 2 90° elbow")).toBe(1);
  expect(of("EMT 2 bend")).toBeUndefined();
  // 28 ft from corner to corner, less what the elbow's arc saves, less the elbow itself: straight conduit either side of
  // it. Radius 9-1/2 in. (NEC chapter 9, table 2, one-shot, 2): two setbacks are not conduit.
  expect(of("EMT 2 conduit")).toBeCloseTo(28 - (2 * 9.5) / 12, 9);
  expect(order.some(({ Item }) => String(Item).startsWith("not counted"))).toBe(false);
  expect(checkJob(buildJob({ runs }), 2023)).toMatchObject([
    {
      run: "F-1",
      weight: "look",
      finding: "no shoe is listed for EMT 2: its bend is counted as factory elbows.",
      fix: "To bend it in the shop, give EMT 2 a row in Shoes.",
    },
  ]);
});

test("a bend that no factory elbow has is bought too, and stops the run in Checks", () => {
  const runs = runsRange({ ...big, Route: "east 10', bend 37 up, ahead 10'" });
  const items = records(takeoff(runs)).map(({ Item }) => Item);
  expect(items).toContain("EMT 2 37° elbow");
  expect(checkJob(buildJob({ runs }), 2023)[0]).toMatchObject({
    weight: "stop",
    finding: expect.stringContaining("though there is none of 37°"),
  });
});

test("where a rule says that the shop bends every size, a size without a shoe is told as before", () => {
  const runs = runsRange({ ...big, Route: "up 8', east 20'" });
  const rules = [["Rule", "Value"], ["Factory elbows above size, metal", "none"]]; // prettier-ignore
  expect(buildJob({ runs, rules }).rows[0]).toMatchObject({
    problem: expect.stringContaining("no built-in shoe for EMT 2"),
  });
});

test("PVC, which is bought as a rule, and straight runs are no finding", () => {
  const runs = runsRange(
    { ...big, Raceway: "PVC 40", Route: "up 8', east 20'", Conductors: "" },
    { ...big, Run: "F-2", Route: "east 30'" },
  );
  const about = checkJob(buildJob({ runs }), 2023).filter(({ rule }) => !rule.includes("352.44"));
  // What is told of every job with bought elbows: their straight ends are from memory.
  expect(about.filter(({ finding }) => !finding.includes("from memory"))).toEqual([]);
});
