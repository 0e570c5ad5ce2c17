/**
 * Will it pull, in Checks. By hand, from published formulas: legs L·W·f·w, bends e^(w·f·a) (telephone duct manual 8.11, 8.12),
 * cradled 1 + 4/3·(d/(D − d))² (cabledatasheet.com); limits 1,000 lb a grip, twice that on three cables, 300 lb/ft.
 */
import { aboutSection, findingsOf } from "../../support/codeFindings";
import { buildJob } from "../../../src/shop/job/job";
import { checkJob } from "../../../src/shop/checks/checks";
import { runsRange } from "../../takeoff/tables";
import { readConductors } from "../../../src/wiring/readConductors";
import { conductorsWeight } from "../../../src/wiring/cableWeight";

const RUN = {
  ...{ Raceway: "EMT", Size: "2", Route: "east 100'", Conductors: "3 #4/0 XHHW-2", From: "Panel A", To: "MCC" },
  "Check pull": "yes",
};
const RULES = [["Factory elbows above size, metal", "all"]];
const allAbout = (run: object, rules: unknown[][] = []) =>
  aboutSection(findingsOf({ ...RUN, ...run }, [...RULES, ...rules]), "will it pull");
const about = (run: object, rules: unknown[][] = []) => allAbout(run, rules).filter((found) => found.run !== "Rules");

const weight = conductorsWeight(readConductors(RUN.Conductors));
/** EMT 2: 2.067 in. bore; 4/0 XHHW of 0.3197 in². */
const ratio = 2.067 / Math.sqrt((4 / Math.PI) * 0.3197);
const cradled = 1 + 4 / 3 / (ratio - 1) ** 2;

test("a straight run: 100 ft, its weight, friction 0.5 and the cradled correction", () => {
  const [finding] = about({});
  const pounds = 100 * weight * 0.5 * cradled;
  expect(finding).toMatchObject({ weight: "look", fix: "Feed it from Panel A." });
  expect(finding!.finding).toBe(
    `fed from Panel A ${pounds.toFixed(0)} lb; from MCC ${pounds.toFixed(0)} lb. Limits 2000 lb and 300 lb/ft; friction 0.5, ` +
      `${Number(weight.toFixed(2))} lb/ft, cradled ${Number(cradled.toFixed(2))}.`,
  );
});

test("the end near the bend is the one to feed: less is carried into it", () => {
  // 10 ft, a bought 90 of 9-1/2 in., 90 ft. From the near end: 10 ft of leg grow in the bend; from the far end 90 ft do.
  const [finding] = about({ Route: "east 10', north 90'" });
  const setback = 9.5 / 12;
  const leg = (feet: number) => (feet - setback) * weight * 0.5 * cradled;
  const grown = Math.exp((cradled * 0.5 * Math.PI) / 2);
  const [near, far] = [leg(10) * grown + leg(90), leg(90) * grown + leg(10)];
  expect(finding!.fix).toBe("Feed it from Panel A.");
  expect(finding!.finding).toContain(`fed from Panel A ${near.toFixed(0)} lb`);
  expect(finding!.finding).toContain(`from MCC ${far.toFixed(0)} lb`);
  expect(about({ Route: "east 90', north 10'" })[0]!.fix).toBe("Feed it from MCC.");
});

test.each([
  ["Panel A", ["east 60'", "north 200'", "east 200'", "north 200'"]],
  ["MCC", ["east 200'", "north 200'", "east 200'", "north 60'"]],
])(
  "where neither way keeps to the limits, a box where the fix says it makes the part fed from %s one that keeps",
  (end, legs) => {
    const [finding] = about({ Route: legs.join(", ") });
    expect(finding).toMatchObject({ weight: "stop" });
    const [, side, step, feed] = /in the leg (before|after) the bend of step (\d), feeding from (.*?);/.exec(
      finding!.fix,
    )!;
    expect(feed).toBe(end);
    const withBoxIn = (leg: number) => {
      const half = legs[leg]!.replace("200", "100");
      const found = about({ Route: legs.map((each, at) => (at === leg ? `${half}, box, ${half}` : each)).join(", ") });
      expect(found).toHaveLength(2);
      return found.at(feed === "Panel A" ? 0 : 1)!.weight;
    };
    const leg = Number(step) - (side === "before" ? 2 : 1);
    expect(withBoxIn(leg)).toBe("look");
    // No earlier than need be: with the box a leg later that part no longer keeps to the limits.
    expect(withBoxIn(leg + (feed === "Panel A" ? 1 : -1))).toBe("stop");
  },
);

test("friction of its own goes before the rule's", () => {
  expect(about({ "Check pull": 0.15 })[0]!.finding).toContain("friction 0.15");
  expect(about({ "Check pull": "yes" }, [["Pulling friction", 0.3]])[0]!.finding).toContain("friction 0.3,");
});

test("a pull that is parted by a box is told part by part", () => {
  const found = about({ Route: "east 100', box, east 40'" });
  expect(found.map(({ finding }) => finding.slice(0, 30))).toEqual([
    expect.stringMatching(/^pull 1: fed from Panel A/),
    expect.stringMatching(/^pull 2: fed from box 1/),
  ]);
});

const unasked = (run: object, rules: unknown[][] = []) => about({ "Check pull": "", ...run }, rules);

test("asked where Check pull says so, whatever the size; no says no", () => {
  expect(about({ Conductors: "3 #12 THHN" })).toHaveLength(1);
  expect(about({ "Check pull": "no", Route: "east 1000'" })).toEqual([]);
  expect(findingsOf({ ...RUN, "Check pull": "maybe" })[0]!.finding).toBe(
    'Check pull must be yes, no or a coefficient of friction, as in 0.35; got "maybe".',
  );
});

test("unasked a pull is told from 80 % of a limit, or where the rule says, and from 1/0 up", () => {
  // A straight pull of so many feet has so much tension; its limit is 2,000 lb.
  const feet = (share: number) => (share * 2000) / (weight * 0.5 * cradled);
  expect(unasked({ Route: `east ${feet(0.79)}'` })).toEqual([]);
  expect(unasked({ Route: `east ${feet(0.81)}'` })[0]).toMatchObject({ weight: "look" });
  expect(unasked({ Route: `east ${feet(1.01)}'` })[0]).toMatchObject({ weight: "stop" });
  expect(unasked({ Route: `east ${feet(0.5)}'` }, [["Pull finding from", 45]])).toHaveLength(1);
  expect(unasked({ Route: "east 10'" }, [["Pull finding from", 0]])).toHaveLength(1);
  expect(unasked({ Conductors: "3 #1 THHN", Route: "east 5000'" })).toEqual([]);
  expect(unasked({ Conductors: "3 #1 THHN, 1 #1/0 bare", Route: "east 5000'" })).toEqual([]);
});

test("that friction and limits are general ones is said once for the job, until a rule or the runs say theirs", () => {
  const said = (runs: object[], rules: unknown[][] = []) => {
    const job = buildJob({
      runs: runsRange(...runs.map((run, at) => ({ Run: `R-${at}`, ...RUN, "Check pull": "", ...run }))),
      rules: [["Rule", "Value"], ...RULES, ...rules],
    });
    return aboutSection(checkJob(job, 2023), "will it pull").map(({ run, finding }) => [run, finding]);
  };
  expect(said([{}, {}, { Conductors: "3 #12 THHN" }])).toEqual([
    [
      "Rules",
      expect.stringContaining(
        "pulls of 2 runs are looked at with a general friction, 0.5, and general limits: grip, 300 lb/ft.",
      ),
    ],
  ]);
  expect(said([{}, {}], [["Pulling friction", 0.5]])).toEqual([]);
  expect(said([{ Conductors: "3 #12 THHN" }])).toEqual([]);
  expect(said([{ "Check pull": 0.3 }]).map(([run]) => run)).toEqual(["R-0"]);
});

test("limits follow the rules: an eye takes the conductors' metal, and sidewall is yours to set", () => {
  // 3 · 0.008 · 211,600 = 5,078 lb.
  const rules = [["Pulled by", "eye"], ["Most sidewall pressure", 500]]; // prettier-ignore
  expect(about({}, rules)[0]!.finding).toContain("Limits 5078 lb and 500 lb/ft");
  expect(about({ Conductors: "3 #4/0 XHHW-2, 1 #4 bare" }, rules)[0]!.finding).toContain("complex 1.4");
});

test("three that may jam at a bend are told", () => {
  // By hand: 2.067 / 0.689 = 3; 0.3728 in² is 0.689 in. thick: between 4/0 (0.638) and 250 kcmil (0.705): 2.93.
  const jam = (Conductors: string, Route: string) =>
    findingsOf({ ...RUN, Conductors, Route }, RULES).filter(({ rule }) => rule.includes("jam"));
  expect(jam("3 250 kcmil XHHW-2", "east 60, north 60")).toHaveLength(1);
  expect(jam("3 250 kcmil XHHW-2", "east 60")).toEqual([]);
  expect(jam("3 #1/0 XHHW-2", "east 60, north 60")).toEqual([]);
  expect(jam("4 250 kcmil XHHW-2", "east 60, north 60")).toEqual([]);
});
