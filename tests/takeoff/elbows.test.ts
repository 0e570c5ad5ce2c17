import { buildJob } from "../../src/shop/job/job";
import { fittingRule, USUAL_FITTINGS } from "../../src/shop/fittings/fittingRule";
import { scheduleJob } from "../../src/shop/schedule/schedule";
import { readRules } from "../../src/rules/rules";
import { jobCuts } from "../../src/takeoff/reports/jobCuts";
import { takeoff } from "../../src/takeoff/lines/takeoff";
import { quantityOf, records, runsRange } from "./tables";

const rulesOf = (...rows: (string | number)[][]) => [["Rule", "Value"], ...rows];

/** Common practice, no source: what there is no shoe for is bought bent. */
const USUAL = { metal: "no shoe", pvc: "no shoe", angles: [90, 60, 45, 30, 22.5, 15, 11.25], radius: [], ends: [] };

test("the usual elbows are those of the built-in rules", () => {
  expect(USUAL_FITTINGS).toMatchObject(USUAL);
});

test("the user's rules count; the ones that cannot be read are told and leave the usual", () => {
  const rules = rulesOf(
    ["Factory elbows above size, metal", "1 1/4"],
    ["Factory elbows above size, PVC", "None"],
    ["Factory elbow angles", "90; 45"],
  );
  expect(fittingRule(readRules(rules))).toMatchObject({ ...USUAL, metal: "1-1/4", pvc: "none", angles: [90, 45] });
  const bad = readRules(rulesOf(["Factory elbow angles", "90, right"]));
  expect(fittingRule(bad)).toEqual(USUAL_FITTINGS);
  expect(bad.problems).toEqual([expect.stringMatching(/^rules row 2: .*got "90, right"/)]);
});

describe("shop and take-off count the same pieces", () => {
  const runs = runsRange(
    { Run: "P", Raceway: "PVC 40", Size: "2", Route: "up 24, east 160', up 24", Quantity: 2 },
    { Run: "M", Size: "3/4", Route: "up 40, east 150, offset 6 up at 30, ahead 60, north 200" },
  );
  const rules = rulesOf(["Factory elbows above size, metal", "1/2"], ["Factory elbow angles", 90]);
  const schedule = scheduleJob(buildJob({ runs: runs, rules: rules }));

  test("each piece of the schedule is cut under its own name, and nothing else", () => {
    const named = new Map<string, number>();
    for (const { For } of records(jobCuts(runs, { rules }))) {
      for (const label of String(For).split(/[,;] /).filter(Boolean)) {
        const [name = "", times = "1"] = label.split(" ×");
        named.set(name, (named.get(name) ?? 0) + Number(times));
      }
    }
    const cut = schedule.filter(({ Piece }) => Piece !== "");
    expect(Object.fromEntries(named)).toEqual(Object.fromEntries(cut.map((row) => [`${row.Run}/${row.Piece}`, row.Quantity]))); // prettier-ignore
    expect(named.size).toBeGreaterThan(20);
  });

  test("a length stands under the same name in both", () => {
    const one = runsRange({ Run: "M", Size: "3/4", Route: "up 40, east 80, offset 6 up at 30, ahead 40, north 70" });
    const lengths = new Map(
      records(jobCuts(one, { rules })).flatMap(({ Cut, For }): [string, string][] => {
        const [cuts, labels] = [String(Cut).split(", "), String(For).split("; ")];
        return For === "" ? [] : labels.map((label, at) => [label, cuts[at]!]);
      }),
    );
    const cut = scheduleJob(buildJob({ runs: one, rules: rules })).filter(({ Piece }) => Piece !== "");
    // Both to the nearest sixteenth, in feet and inches there and in inches here.
    expect(Object.fromEntries(lengths)).toEqual(Object.fromEntries(cut.map((row) => [`M/${row.Piece}`, inInches(String(row["Cut 1/16"]))]))); // prettier-ignore
    expect(lengths.size).toBe(4);
  });

  test("conduit, elbows, bends and couplings are those of the schedule's lines", () => {
    const table = takeoff(runs, { rules });
    const of = (run: string) => schedule.filter(({ Run }) => Run === run);
    const cut = (run: string) =>
      new Map(of(run).filter(({ Piece }) => Piece !== "").map((row) => [row.Piece, Number(row["Cut length"])])); // prettier-ignore
    const feet = (run: string) => [...cut(run).values()].reduce((sum, length) => sum + length, 0) / 12;
    const elbows = (run: string) => of(run).filter(({ Kind }) => Kind === "factory elbow").length;
    expect(quantityOf(table, "PVC 40 2 conduit")).toBeCloseTo(2 * feet("P"), 9);
    // By hand: 24 + 1920 + 24 less 4 × 9.5 and 4 straight ends of 2 (from memory).
    expect(2 * feet("P")).toBeCloseTo((2 * (1968 - 38 - 8)) / 12, 9);
    expect(quantityOf(table, "PVC 40 2 90° elbow")).toBe(2 * elbows("P"));
    expect(quantityOf(table, "EMT 3/4 conduit")).toBeCloseTo(feet("M"), 9);
    expect(quantityOf(table, "EMT 3/4 bend")).toBe(of("M").filter(({ Bend }) => Bend !== "").length);
    expect(quantityOf(table, "EMT 3/4 90° elbow")).toBe(elbows("M"));
    expect(quantityOf(table, "EMT 3/4 set-screw coupling")).toBe(cut("M").size + elbows("M") - 1);
    expect([elbows("P"), elbows("M")]).toEqual([2, 2]);
  });
});

test("no pup stands beside an elbow: the pieces are parted as straight conduit is", () => {
  // 144 less 2 × 11.5 are 121: a whole stick would leave 1 in.; a foot is the least where it costs no piece more.
  const rows = scheduleJob(
    buildJob({ runs: runsRange({ Run: "P", Raceway: "PVC 40", Size: "2", Route: "up 22, east 144, up 22" }) }),
  );
  expect(rows.filter(({ Piece }) => Piece !== "").map((row) => Math.round(Number(row["Cut length"]) * 1e6) / 1e6)).toEqual([10.5, 109, 12, 10.5]); // prettier-ignore
});

/** 4' 2-1/2" as the cutting plan writes it, in inches: 50-1/2". */
function inInches(feet: string): string {
  const [, whole = "0", inches = "0", rest = ""] = /^(?:(\d+)' )?(\d+)?(.*)"$/.exec(feet)!;
  return `${12 * Number(whole) + Number(inches)}${rest}"`;
}
