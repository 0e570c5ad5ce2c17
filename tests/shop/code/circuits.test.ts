/**
 * Ampacity, grounds, wet places and boxes in Checks. Values by hand from NEC 2023 tables 310.16, 250.122 and 314.16 as read; standard
 * ratings and the temperatures of terminals from memory.
 */
import { buildJob } from "../../../src/shop/job/job";
import { checkJob } from "../../../src/shop/checks/checks";
import { aboutSection, findingsOf } from "../../support/codeFindings";
import { runsRange } from "../../takeoff/tables";

const EMT = { Raceway: "EMT", Size: "2", Route: "east 100" };
const about = (run: object, section: string, rules: unknown[][] = []) =>
  aboutSection(findingsOf({ ...EMT, ...run }, rules), section);

test.each([
  // #8 copper has 40 A at 60 °C: 40 A is a standard rating, 45 and more are not protected.
  ["3 #8 THHN", 40, 40],
  // #6: 55 A at 60 °C is no standard rating: the next, 60, may be used (240.4(B)).
  ["3 #6 THHN, 1 #10 THHN", 60, 60],
  // Above 100 A terminals are of 75 °C: #1 has 130 A, the next rating is 150.
  ["3 #1 THHN, 1 #6 THHN", 150, 150],
  // 500 kcmil: 380 A at 75 °C, next 400.
  ["3 500 kcmil THHN, 1 #3 THHN", 400, 400],
  // Aluminum 250 kcmil at 75 °C: 205 A, next 225.
  ["3 250 kcmil XHHW-2 aluminum, 1 #4 bare aluminum", 225, 225],
])("%s carries a breaker of %d A and no more", (Conductors, Breaker, most) => {
  expect(about({ Conductors, Breaker }, "240.4")).toEqual([]);
  const [finding] = about({ Conductors, Breaker: Breaker + 5 }, "240.4");
  expect(finding!.finding).toContain(`the largest breaker is ${most} A`);
});

test("small conductors have a largest device of their own: 12 AWG 20 A, though it carries 30 at 90 °C", () => {
  const [finding] = about({ Conductors: "3 #12 THHN", Breaker: 25 }, "240.4(D)", [["Terminals to 100 A", 75]]);
  expect(finding).toMatchObject({ weight: "stop", rule: "NEC 2023, 240.4(D)" });
  expect(finding!.fix).toMatch(/^Use #10 or larger, or a breaker of 20 A or less\./);
});

test("adjustment and ambient are worked out in words: 30 A · 0.7 · 0.87 = 18.27 A", () => {
  const run = { Conductors: "9 #12 THHN", Breaker: 20, Ambient: 45 };
  // 18.27 A is no standard rating: the next one up is 20, so that 20 A may be used and 25 may not.
  expect(about(run, "240.4")).toEqual([]);
  expect(about({ ...run, Breaker: 25 }, "240.4")[0]!.finding).toBe(
    "a breaker of 25 A on #12 THHN: 30 A · 0.7 (310.15(C)(1)) · 0.87 (310.15(B)(1)) = 18.27 A each (9 current-carrying, 45 °C, " +
      "terminals of 60 °C); the largest breaker is 20 A.",
  );
  // 30 conductors: 13.5 A, so 15 A and not 20.
  expect(about({ Conductors: "30 #12 THHN", Breaker: 20, Size: "2" }, "240.4")[0]!.finding).toContain("= 13.5 A each");
});

test("without a breaker more than three conductors are told; grounds and neutrals that are named are not counted", () => {
  expect(about({ Conductors: "4 #12 THHN" }, "310.15(C)(1)")[0]).toMatchObject({
    weight: "look",
    finding:
      "#12 THHN carry 30 A · 0.8 (310.15(C)(1)) = 24 A, at the terminals 20 A each: 4 current-carrying, 30 °C, terminals of 60 °C.",
  });
  expect(about({ Conductors: "3 #12 THHN, 1 #12 THHN neutral, 1 #12 THHN ground" }, "310.15")).toEqual([]);
  expect(about({ Conductors: "3 #12 THHN, 1 #12 THHN" }, "310.15")).toEqual([]);
  // A nipple: nothing is taken off.
  expect(about({ Conductors: "9 #12 THHN", Route: "east 24" }, "310.15")).toEqual([]);
});

test("parallel sets share the breaker: 600 A on two sets of 350 kcmil (310 A each)", () => {
  const run = { Conductors: "3 350 kcmil THHN, 1 #1 THHN" };
  expect(about({ ...run, Breaker: "600 A, 2 sets" }, "240.4")).toEqual([]);
  expect(about({ ...run, Breaker: 600 }, "240.4")[0]!.weight).toBe("stop");
  // 620 A is no standard rating: 700 may be used.
  expect(about({ ...run, Breaker: "800 A, 2 sets" }, "240.4")[0]!.finding).toContain("the largest breaker is 700 A");
});

test("a hot place without Ambient is told, and an ambient no table has", () => {
  expect(about({ Conductors: "3 #12 THHN", Where: "hot" }, "310.15(B)(1)")[0]!.finding).toContain("air of 30 °C");
  expect(about({ Conductors: "3 #12 THHN", Where: "hot" }, "310.15(B)(1)", [["Ambient temperature", "122 F"]])[0]!.finding) // prettier-ignore
    .toContain("0.82");
  expect(about({ Conductors: "3 #12 THHN", Ambient: 90, Breaker: 20 }, "310.16")[0]!.finding).toContain("90 °C");
});

test("THHN is not for wet places, and XHHW has 75 °C there", () => {
  expect(about({ Conductors: "3 #6 THHN", Where: "wet" }, "310.10(C)")[0]!.weight).toBe("stop");
  expect(about({ Conductors: "3 #6 THWN-2", Where: "buried" }, "310.10(C)")).toEqual([]);
  // 6 #6: 75 A · 0.8 = 60 A dry at 90 °C; wet XHHW 65 · 0.8 = 52.
  const run = { Conductors: "6 #6 XHHW", Breaker: 70 };
  const rules = [["Terminals to 100 A", 75]];
  expect(about(run, "240.4", rules)[0]!.finding).toContain("75 A · 0.8 (310.15(C)(1)) = 60 A each");
  expect(about({ ...run, Where: "wet" }, "240.4", rules)[0]!.finding).toContain(
    "65 A · 0.8 (310.15(C)(1)) = 52 A each",
  );
});

test("the ground by the breaker, and larger in proportion by exact circular mils", () => {
  const ground = (Conductors: string, Breaker: number, more: object = {}) =>
    about({ Conductors, Breaker, ...more }, "250.122").map(({ finding }) => finding);
  expect(ground("3 #6 THHN, 1 #10 THHN", 60)).toEqual([]);
  expect(ground("3 #6 THHN, 1 #12 THHN", 60)[0]).toBe(
    "a breaker of 60 A takes a ground of at least #10 copper; the run has #12 (#12 THHN taken for the ground).",
  );
  // #4 where #6 serves: 10,380 · 41,740/26,240 = 16,511.4 cmil, a hair above #8's 16,510.
  expect(ground("3 #4 THHN, 1 #8 THHN ground", 60)[0]).toBe(
    "a breaker of 60 A takes a ground of at least #6 copper (#10 by the table, larger in proportion: the circuit needs #6 and has #4); the run has #8.",
  );
  expect(ground("3 #4 THHN, 1 #6 THHN ground", 60)).toEqual([]);
  // Conductors that are larger for their number alone keep the table's ground (250.122(B)).
  expect(ground("9 #10 THHN, 1 #12 THHN ground", 20)).toEqual([expect.stringContaining("at least #10 copper")]);
  expect(ground("20 #10 THHN, 1 #12 THHN ground", 20)).toEqual([]);
  // PVC cannot serve as the ground; metal may.
  expect(ground("3 #6 THWN-2", 60, { Raceway: "PVC 40" })[0]).toContain("no equipment grounding conductor is named");
  expect(ground("3 #6 THHN", 60)).toEqual([]);
});

describe("boxes whose name tells their volume", () => {
  const box = (name: string, ...conductors: string[]) => {
    const runs = runsRange(
      ...conductors.map((Conductors, at) => ({ Run: `R-${at}`, Size: "1", Route: "east 100", To: name, Conductors })),
    );
    return aboutSection(checkJob(buildJob({ runs }), 2023), "314.16");
  };

  test.each([
    // Table 314.16(A): a 4 in. square box 1-1/2 deep takes 9 #12; its 21 in³ are 9.33 of 2.25.
    ["JB 4 sq x 1-1/2", ["9 #12 THHN"], ["10 #12 THHN"]],
    ["JB (4 square 2-1/8)", ["13 #12 THHN"], ["14 #12 THHN"]],
    ["JB 4-11/16 x 2-1/8", ["18 #12 THHN"], ["19 #12 THHN"]],
    ["JB 4 oct x 1-1/2", ["6 #12 THHN"], ["7 #12 THHN"]],
    ["Switch 3 x 2 x 3-1/2", ["8 #12 THHN"], ["9 #12 THHN"]],
    ["Box 4 x 2-1/8 x 1-7/8", ["6 #14 THHN"], ["7 #14 THHN"]],
    ["JB-7 22.5 in3", ["4 #12 THHN", "6 #12 THHN"], ["4 #12 THHN", "7 #12 THHN"]],
  ])("%s", (name, most, more) => {
    expect(box(name, ...most)).toEqual([]);
    expect(box(name, ...more)[0]).toMatchObject({ run: name, weight: "look", rule: "NEC 2023, 314.16(B)" });
  });

  test("grounds count as one to four and a quarter each beyond; a box without a volume and large conductors are left out", () => {
    // 6 #12 are 13.5 in³, five grounds 2.25 · 1.25 = 2.8125: 16.3125 in all.
    const five = Array.from({ length: 5 }, () => "1 #12 THHN ground");
    expect(box("JB 16.32 in3", "6 #12 THHN", ...five)).toEqual([]);
    expect(box("JB 16.3 in3", "6 #12 THHN", ...five)).toHaveLength(1);
    const twice = { Run: "A", Size: "1", Route: "east 100", To: "JB 13.5 in3", Conductors: "4 #12 THHN", Quantity: 2 };
    expect(aboutSection(checkJob(buildJob({ runs: runsRange(twice) }), 2023), "314.16")[0]!.finding).toContain("take 18 in³ of its 13.5"); // prettier-ignore
    expect(box("JB-1", "40 #12 THHN")).toEqual([]);
    expect(box("JB 4 sq x 1-1/2", "4 #2 THHN")).toEqual([]);
  });
});

// EC&M code quiz 15: straight 2 in.: 16. U pull of 2 in.: 6 · 2 + 2 = 14. Angle: 6 · 2 = 12.
test.each([
  ["east 60, box, east 60", "314.28(A)(1)", "a straight pull: at least 16 in. long"],
  ["east 60, box, north 60", "314.28(A)(2)", "an angle pull: at least 12 in. from each entry to the wall across"],
  ["east 60, box, west 60", "314.28(A)(2)", "a U pull: at least 14 in."],
])("%s: the box along the run", (Route, section, words) => {
  const found = about({ Route, Conductors: "3 #4 THHN" }, "314.28");
  expect(found).toHaveLength(1);
  expect(found[0]!.rule).toBe(`NEC 2023, ${section}`);
  expect(found[0]!.finding).toContain(words);
  expect(about({ Route, Conductors: "3 #6 THHN" }, "314.28")).toEqual([]);
});
