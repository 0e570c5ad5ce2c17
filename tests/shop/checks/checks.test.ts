import { buildJob } from "../../../src/shop/job/job";
import { checkJob } from "../../../src/shop/checks/checks";
import { findingsTable, findingsText } from "../../../src/shop/checks/findings";
import type { Finding } from "../../../src/shop/code/finding";

const HEADER = ["Run", "Raceway", "Size", "Route", "Conductors", "Straps"];
const SHOE_HEADER = ["Raceway", "Size", "Radius", "Deduct", "Springback", "Dial start", "Shortest tail"];

/** Shoes that were never measured, and ampacity, have tests of their own. */
const aboutRuns = ({ rule }: Finding): boolean => !/^a shoe is measured|310.15/.test(rule);

const findingsOf = (row: unknown[], shoe?: unknown[], edition: 2020 | 2023 = 2023): Finding[] =>
  checkJob(buildJob({ runs: [HEADER, row], shoes: shoe ? [SHOE_HEADER, shoe] : null }), edition).filter(aboutRuns);

describe("checkJob", () => {
  test("a sound run has no finding", () => {
    expect(findingsOf(["A-1", "EMT", "1/2", "up 40, east 60", "9 #12 THHN", 2])).toEqual([]);
  });

  // Published: NEC 2023 358.24(B) and NEC 2020 358.26: no more than 360° between pull points.
  test.each([
    [2023, "NEC 2023, 358.24(B)"],
    [2020, "NEC 2020, 358.26"],
  ] as const)("more than 360° between boxes names the rule of %d", (edition, rule) => {
    const route =
      "up 40, east 60, south 60, east 60, bend 15 up, ahead 40, bend 45 up, ahead 40, bend 45 south, ahead 40";
    expect(findingsOf(["A-1", "EMT", "1/2", route], undefined, edition)).toEqual([
      expect.objectContaining({
        run: "A-1",
        weight: "stop",
        rule,
        finding: "the run turns 375° between pull points; the limit is 360°.",
      }),
    ]);
  });

  test("exactly 360° is allowed, and a box starts the count again", () => {
    expect(findingsOf(["A-1", "EMT", "1/2", "up 40, east 60, south 60, east 60, up 40"])).toEqual([]);
    const parted = "up 40, east 60, south 60, box, east 60, north 60, east 60, up 40";
    expect(findingsOf(["A-1", "EMT", "1/2", parted])).toEqual([]);
  });

  // Published: NEC chapter 9, table 2, one-shot column: 1/2 needs 4 in.
  test("a shoe below the least radius is told", () => {
    const [finding] = findingsOf(["A-1", "EMT", "1/2", "up 40, east 60"], ["EMT", "1/2", 3.5, 5]);
    expect(finding).toMatchObject({
      rule: "NEC 2023, 358.24(A)",
      finding: "the shoe bends to 3.5 in. radius; EMT 1/2 needs at least 4 in.",
    });
  });

  // Computed from published tables: ten 12 THHN are 0.133 in² of 0.304; nine fit 40 %, ten do not.
  test("conductors over the limit name fill, limit and the size that fits", () => {
    const [finding] = findingsOf(["A-1", "EMT", "1/2", "up 40, east 60", "10 #12 THHN"]);
    expect(finding).toMatchObject({
      weight: "stop",
      finding: "10 #12 THHN fill 43.8 % of EMT 1/2; the limit is 40 %.",
      fix: "Use EMT 3/4, or part the conductors between two runs.",
    });
    expect(findingsOf(["A-1", "EMT", "1/2", "up 10, east 12", "10 #12 THHN"])).toEqual([]); // a nipple: 60 %
  });

  test("too few straps are told with the spacing", () => {
    const [finding] = findingsOf(["A-1", "EMT", "1/2", "east 300", "", 2]);
    expect(finding!.finding).toBe(
      "2 straps are planned; the run needs at least 3: one within 36 in. of each box and no more than 120 in. apart.",
    );
  });

  test("a dial that does not reach is told, and starting below zero puts it right", () => {
    const row = ["A-1", "EMT", "1/2", "up 40, bend 100 east, ahead 60"];
    expect(findingsOf(row, ["EMT", "1/2", 4, 5, 6])[0]!.finding).toBe(
      "a bend of 100° with 6.67° springback passes the dial's end at 105°.",
    );
    expect(findingsOf(row, ["EMT", "1/2", 4, 5, 6, -5])).toEqual([]);
  });

  test("a sweep in too few shots, bends too close together and a short tail want a second look", () => {
    expect(findingsOf(["A-1", "EMT", "1/2", "up 60, sweep 24 in 5, east 60"])[0]).toMatchObject({
      weight: "look",
      finding: "step 2: a sweep in 5 shots turns 18° at each, and may kink.",
      fix: "Make it in 9 shots or more.",
    });
    const close = findingsOf(["A-1", "EMT", "1/2", "up 40, east 9, up 40"]);
    expect(close[0]!.finding).toContain("1 in. of straight conduit between two bends; the shoe needs 2 in.");
    const short = findingsOf(["A-1", "EMT", "1/2", "up 5, east 5"]);
    expect(short[0]!.finding).toBe("piece 1, bend 1: the datum end has 1 in. to hold; the shoe needs 2 in.");
  });

  test("a run that cannot be built, a bad shoe and a repeated name are told beside each other", () => {
    const runs = [
      HEADER,
      ["A-1", "EMT", "1/2", "up 40, east 7, up 40"],
      ["A-1", "EMT", "1/2", "up 40, east 60"],
      ["A-2", "EMT", "3/4", "up 40, east 60"],
    ];
    const shoes = [SHOE_HEADER, ["EMT", "3/4", "wide", 6]];
    expect(
      checkJob(buildJob({ runs, shoes }), 2023)
        .filter(aboutRuns)
        .map(({ run, weight }) => [run, weight]),
    ).toEqual([
      ["Shoes", "stop"],
      ["A-1", "look"],
      ["A-1", "stop"],
      ["A-2", "stop"],
    ]);
  });
});

describe("findings as table and as text", () => {
  const finding: Finding = { run: "A-1", weight: "stop", rule: "a rule", finding: "It is long.", fix: "Cut it." };

  test("the table has a header row, and a line in words when nothing was found", () => {
    expect(findingsTable([finding], 3)).toEqual([
      ["Run", "Weight", "Rule", "Finding", "Fix"],
      ["A-1", "stop", "a rule", "It is long.", "Cut it."],
    ]);
    expect(findingsTable([], 3)[1]).toEqual(["all runs", "ok", "", "3 runs checked, nothing found", ""]);
  });

  test("one cell's text is OK without findings", () => {
    expect([findingsText([]), findingsText([finding])]).toEqual(["OK", "It is long. (a rule) Cut it."]);
  });
});
