import { readRules } from "../../../src/rules/rules";
import { jobOfRuns } from "../../support/jobs";
/**
 * Runs with bends that are bought, by hand: an elbow of radius R takes R·tan(A/2) of each leg beside it. Radius of PVC and
 * large EMT: NEC chapter 9, table 2, one-shot and full-shoe benders: 9-1/2 in. for trade size 2 (from memory). Straight ends
 * of elbows: ANSI C80.1 and PVC, 2 in. for trade size 2 (from memory); none for EMT. Lengths [in].
 */
import { USUAL_BENCH } from "../../../src/shop/bench/bench";
import { buildRun, buildRunWith } from "../../../src/shop/run/buildRun";
import type { BuiltRun } from "../../../src/shop/run/builtRun";
import { pullParts } from "../../../src/shop/run/builtRun";
import { checkBuiltRun, checkJob } from "../../../src/shop/checks/checks";
import { elbowAngles, USUAL_FITTINGS, type FittingRule } from "../../../src/shop/fittings/fittingRule";
import { jobTickets } from "../../../src/shop/ticket/jobTickets";
import type { Run } from "../../../src/shop/run/runsTable";
import { scheduleRun, scheduleJob } from "../../../src/shop/schedule/schedule";
import { setupTable } from "../../../src/shop/bench/setupTable";
import { readShoes } from "../../../src/shop/shoe/shoeBook";
import { ticketsOf } from "../../../src/shop/ticket/ticket";
import { HALF_EMT, runOf } from "../../support/demoShoe";

const EXACT = 9;
const near = (value: number): number => expect.closeTo(value, EXACT) as number;
const SHOES = readShoes(null);
/** A 90 of R 9.5 with its straight ends. */
const QUARTER = (Math.PI / 2) * 9.5 + 4;

const pvc = (route: string, cells: Partial<Run> = {}): BuiltRun =>
  buildRunWith(runOf(route, { raceway: "PVC 40", size: "2", ...cells }), SHOES);
/** 1/2 EMT of R 4 whose 90s are bought. */
const mixed = (route: string, cells: Partial<Run> = {}): BuiltRun => buildRun(runOf(route, cells), HALF_EMT, [90]);

/** Pulls in their order: a number for a piece to cut, degrees for an elbow. */
const linesOf = ({ pulls }: BuiltRun): (number | string)[][] =>
  pulls.map((pull) => pullParts(pull).map((part) => ("cutLength" in part ? part.cutLength : `${part.angle}°`)));

describe("which bends are bought", () => {
  const rule = (cells: Partial<FittingRule>): FittingRule => ({ ...USUAL_FITTINGS, angles: [90, 45], ...cells });
  test.each<[string, Partial<FittingRule>, Run["raceway"], Run["size"], boolean, shoe?: boolean]>([
    ["metal without a shoe, as usual", {}, "RMC", "4", true],
    ["no metal that there is a shoe for, as usual", {}, "RMC", "1", false, true],
    ["all PVC, as usual", {}, "PVC 40", "1/2", true],
    ["all PVC, whatever its wall", {}, "PVC 80", "6", true],
    ["coated rigid is metal", { metal: "none" }, "PVC-coated RMC", "4", false],
    ["metal above a size", { metal: "1" }, "EMT", "1-1/4", true],
    ["not the size itself", { metal: "1" }, "EMT", "1", false],
    ["not a smaller one", { metal: "1" }, "EMT", "3/4", false],
    ["all metal", { metal: "all" }, "IMC", "1/2", true],
    ["PVC above a size", { pvc: "1" }, "PVC 40", "1", false],
    ["no PVC that Shoes has a shoe for, as usual", {}, "PVC 40", "1", false, true],
    ["all PVC, shoe or not", { pvc: "all" }, "PVC 40", "1", true, true],
    ["metal without a shoe", { metal: "no shoe" }, "EMT", "2", true],
    ["metal with one", { metal: "no shoe" }, "EMT", "2", false, true],
    ["no PVC", { pvc: "none" }, "PVC 40", "6", false],
    ["metal's rule is not PVC's", { metal: "all", pvc: "none" }, "PVC 80", "2", false],
  ])("%s", (_, cells, raceway, size, bought, shoe = false) => {
    expect(elbowAngles({ raceway, size }, rule(cells), shoe)).toEqual(bought ? [90, 45] : []);
  });
});

describe("a run of PVC", () => {
  test("its legs less the setbacks are cut from sticks, the elbows stand between them", () => {
    // 160 ft less 2 × 11.5 in. are 1897: fifteen sticks and 97.
    const run = pvc("up 24, east 160', up 24");
    expect(linesOf(run)).toEqual([
      [near(12.5), "90°", ...Array<number>(15).fill(near(120)), near(97), "90°", near(12.5)],
    ]);
    expect(run.pulls[0]!.pieces.map(({ number }) => number)).toEqual(Array.from({ length: 18 }, (_, at) => at + 1));
    expect(run.shoe).toMatchObject({ radius: 9.5, source: "no shoe: every bend is a factory elbow" });
  });

  test("couplings stand wherever two of them meet", () => {
    const { joints } = pvc("up 24, east 60, up 24").pulls[0]!;
    expect(joints).toEqual([12.5, 12.5 + QUARTER, 49.5 + QUARTER, 49.5 + 2 * QUARTER].map(near));
  });

  test("a leg that the elbows use up gives no piece", () => {
    expect(linesOf(pvc("up 11.5, east 23, up 40"))).toEqual([["90°", "90°", near(28.5)]]);
    expect(linesOf(pvc("up 11.5, east 11.5"))).toEqual([["90°"]]);
    // Arcs with nothing between them are laid out, though no elbow is without ends: a check says so.
    expect(linesOf(pvc("up 9.5, east 19, up 40"))).toEqual([["90°", "90°", near(28.5)]]);
    expect(() => pvc("up 9, east 40")).toThrow("0.5 in. short");
  });

  test("pieces are counted through the boxes", () => {
    const run = pvc("up 30, east 30, box, up 11.5, east 30, box, east 20");
    expect(linesOf(run)).toEqual([[18.5, "90°", near(18.5)], ["90°", near(18.5)], [near(20)]]);
    expect(run.pulls.flatMap(({ pieces }) => pieces).map(({ number, pull }) => [number, pull])).toEqual([
      [1, 1],
      [2, 1],
      [3, 2],
      [4, 3],
    ]);
    expect(run.pulls.map(({ elbows }) => elbows.map(({ afterPiece }) => afterPiece))).toEqual([[1], [2], []]);
  });

  test("without a bend it is plain straight conduit; with one of another angle all its bends are bought", () => {
    expect(pvc("east 90").shoe.source).toBe("no shoe: straight conduit");
    const odd = pvc("up 40, bend 25 east, ahead 40, bend 45 east, ahead 40");
    expect(odd.unlisted).toEqual([expect.closeTo(25, 9)]);
    expect(odd.pulls[0]!.elbows).toHaveLength(2);
  });

  test("is bent where Shoes has a shoe for it, unless the rule says otherwise", () => {
    const run = runOf("up 40, east 90", { raceway: "PVC 40", size: "1" });
    const own = readShoes([
      ["Raceway", "Size", "Radius", "Deduct"],
      ["PVC 40", "1", 8, 10],
    ]);
    const radius = (rule?: FittingRule) => buildRunWith(run, own, rule).shoe.radius;
    // NEC chapter 9, table 2: 5-3/4 in. for trade size 1.
    expect([radius({ ...USUAL_FITTINGS, pvc: "all" }), radius({ ...USUAL_FITTINGS, pvc: "none" })]).toEqual([5.75, 8]);
    expect([radius(), buildRunWith(run, SHOES).shoe.radius]).toEqual([8, 5.75]);
    // A row of Shoes that cannot be used is told, not passed over for elbows.
    const broken = readShoes([["Raceway", "Size", "Radius"], ["PVC 40", "1", -8]]); // prettier-ignore
    expect(() => buildRunWith(run, broken)).toThrow(/shoes row 2/);
    expect(() => buildRunWith(run, SHOES, { ...USUAL_FITTINGS, pvc: "none" })).toThrow("no built-in shoe for PVC 40 1");
  });
});

describe("a run with elbows and bends of the shop", () => {
  // A 30 of R 4: setback 4·tan 15°, arc 4·π/6. The offset's leg is 12.
  const SET = 4 * Math.tan(Math.PI / 12);
  const ARC = (4 * Math.PI) / 6;
  const ROUTE = "up 40, east 50, offset 6 up at 30, ahead 40, north 30";

  test("the conduit between two elbows is one piece with its marks", () => {
    const run = mixed(ROUTE);
    const middle = 50 - 4 - SET + ARC + 12 - 2 * SET + ARC + 40 - SET - 4;
    expect(linesOf(run)).toEqual([[near(36), "90°", near(middle), "90°", near(26)]]);
    const rows = scheduleRun(run);
    expect(rows.map((row) => [row.Piece, row.Bend, row.Kind, row.Angle, row.Plane, row.Turn])).toEqual([
      [1, "", "straight", "", "", ""],
      ["", "", "factory elbow", 90, 0, "first bend"],
      [2, 1, "offset", 30, 180, "first bend"],
      [2, 2, "offset", 30, 180, "turn 180°"],
      ["", "", "factory elbow", 90, 90, "points 90° clockwise from the bend before, seen from the datum end"],
      [3, "", "straight", "", "", ""],
    ]);
    // The arrow stands 5 − (4 + 0.353) before the bend.
    expect(rows[2]!.Mark).toEqual(near(50 - 4 - SET - 0.647));
    expect(rows[3]!.Mark).toEqual(near(50 - 4 - SET - 0.647 + ARC + 12 - 2 * SET));
    expect([
      ...new Set(rows.map(({ Quantity, Pull, Job, Area, Size }) => [Quantity, Pull, Job, Area, Size].join())),
    ]).toEqual(["1,1,Ferry terminal,Pump room,1/2"]);
  });

  test("the line of an elbow has nothing to cut, mark or dial", () => {
    const [, elbow] = scheduleRun(mixed(ROUTE));
    const empty = [
      "Piece",
      "Cut length",
      "Cut 1/16",
      "Bend",
      "Mark",
      "Mark 1/16",
      "Line up",
      "Hook",
      "Dial",
      "Handbook off",
    ];
    expect(empty.filter((header) => elbow![header as "Mark"] !== "")).toEqual([]);
    expect(elbow!.Note).toBe("bought; laid out at 4 in. radius; straight ends not known, none counted");
  });

  test("elbows of an offset say so", () => {
    const rows = scheduleRun(buildRun(runOf("east 40, offset 6 up at 30, ahead 40"), HALF_EMT, [30]));
    expect(rows.filter(({ Piece }) => Piece === "").map(({ Note }) => Note)).toEqual([
      "bought; laid out at 4 in. radius; straight ends not known, none counted; offset, 1 of 2",
      "bought; laid out at 4 in. radius; straight ends not known, none counted; offset, 2 of 2",
    ]);
  });

  test("a long stretch is parted on straight conduit, and a stretch no stick spans is told where it lies", () => {
    // Between the elbows: 96 − SET to the first 30, which ends ARC on; couplings stand 3 in. from it.
    const route = "up 10, east 100, bend 30 up, ahead 60, bend 30 down, ahead 20, north 10";
    const run = mixed(route);
    expect(linesOf(run)[0]!.map((part) => (typeof part === "number" ? "cut" : part))).toEqual(["cut", "90°", "cut", "cut", "90°", "cut"]); // prettier-ignore
    const [, first, second] = run.pulls[0]!.pieces;
    expect(first!.cutLength + second!.cutLength).toBeCloseTo(96 - SET + ARC + 60 - 2 * SET + ARC + 20 - SET - 4, EXACT);
    for (const { bends, cutLength } of [first!, second!]) {
      for (const { start } of bends) {
        expect(start).toBeGreaterThanOrEqual(3 - 1e-9);
        expect(cutLength - start - ARC).toBeGreaterThanOrEqual(3 - 1e-9);
      }
    }
    // 6 of conduit and an elbow of 2π come first: 12.28; the first 30 starts 26 − SET on, its clearance 3 before that.
    // From there 3, an arc, 8 − 2 SET, an arc and 3: less than 6 between the bends takes no coupling.
    expect(() => mixed("up 10, east 30, bend 30 up, ahead 8, bend 30 down, ahead 30", { stick: 12 })).toThrow(
      /^A stick of 12 in\. cannot span from 34\.21 in\. to 50\.26 in\. along the conduit/,
    );
  });

  test("a bend right beside an elbow is on the piece, not lost by rounding", () => {
    for (const leg of [4 + SET, 4 + SET + 1e-9, 4 + SET - 1e-9]) {
      const { pieces, elbows } = mixed(`up 40, to 0 ${leg} 40, to 0 ${leg + 40 * Math.cos(Math.PI / 6)} 60`).pulls[0]!;
      expect([elbows.length, pieces.map(({ bends }) => bends.length)]).toEqual([1, [0, 1]]);
      expect(pieces[1]!.bends[0]!.start).toBeGreaterThanOrEqual(0);
      expect(pieces[1]!.bends[0]!.start).toBeLessThan(1e-6);
    }
  });
});

describe("checks", () => {
  const rules = (run: BuiltRun) => checkBuiltRun(run, 2023, readRules(null)).map(({ rule }) => rule);

  test("the bench asks nothing of elbows", () => {
    const stiff = { ...HALF_EMT, springback: 20, shortestTail: 6 };
    const bare = (route: string, elbows: number[]) => rules(buildRun(runOf(route), stiff, elbows));
    const route = "up 8, east 12, up 8";
    expect(bare(route, []).map((rule) => rule.slice(0, 14))).toEqual(["the dial must ", "bends must not"]);
    expect(bare(route, [90])).toEqual([]);
    expect(bare("up 60, sweep 24 in 6, east 60", [])).toContain("shots of a sweep of at most 10° (common practice)");
    expect(bare("up 60, sweep 24 in 6, east 60", [15])).toEqual([]);
  });

  test("a bend of the shop beside an elbow has its own end to hold", () => {
    const run = mixed("up 40, east 7, bend 30 up, ahead 40");
    // 7 less 4 and less 4·tan 15° leave 1.93 in.; the far end is the longer one, so that one is hooked.
    expect(run.pulls[0]!.pieces[1]!.bends[0]!.start).toBeCloseTo(3 - 4 * Math.tan(Math.PI / 12), EXACT);
    expect(scheduleRun(run).find(({ Bend }) => Bend === 1)!.Hook).toBe("far");
    expect(rules(run)).toEqual([]);
    const short = checkBuiltRun(
      mixed("up 40, east 7, bend 30 up, ahead 7, bend 90 down, ahead 9"),
      2023,
      readRules(null),
    );
    expect(short.map(({ finding }) => finding)).toEqual([
      "piece 2, bend 1: the datum end has 1.93 in. to hold; the shoe needs 2 in.",
    ]);
  });

  test("degrees between pull points, fill and straps go on", () => {
    const cells: Partial<Run> = { conductors: "80 #10 THHN", straps: 1 };
    const run = pvc("up 40, east 90, up 90, east 90, up 90, east 90", cells);
    expect(checkBuiltRun(run, 2023, readRules(null)).map(({ finding }) => finding)).toEqual([
      "the run turns 450° between pull points; the limit is 360°.",
      expect.stringMatching(/^80 #10 THHN fill \d+\.\d % of PVC 40 2; the limit is 40 %\.$/),
      expect.stringMatching(/^#10 THHN carry 40 A · 0\.35/),
      expect.stringMatching(/^1 straps are planned; the run needs at least \d+:/),
    ]);
  });

  test("a job of PVC has nothing to stop it; a rule that cannot be read is told in every table", () => {
    const runs = [runOf("up 24, east 60, up 24", { raceway: "PVC 40", size: "2" })];
    const fromMemory = { run: "Rules", weight: "look", finding: expect.stringContaining("from memory") };
    expect(checkJob(jobOfRuns(runs), 2023)).toEqual([expect.objectContaining(fromMemory)]);
    const told = jobOfRuns(runs, SHOES, [["Rule", "Value"], ["Ladders", 3]]); // prettier-ignore
    const words = 'rules row 2: no rule is called "Ladders"; JOB.RULES lists the rules.';
    expect(checkJob(told, 2023)).toEqual([
      expect.objectContaining({ run: "Rules", weight: "stop", finding: words }),
      expect.objectContaining(fromMemory),
    ]);
    expect(scheduleJob(told).at(-1)).toMatchObject({ Run: "Rules", Kind: "not read", Note: words });
    expect(setupTable(told, USUAL_BENCH).slice(1).map((row) => [row[0], row.at(-1)])).toEqual([["Rules", `not read: ${words}`]]); // prettier-ignore
    expect(jobTickets(told).problems).toEqual([{ run: "Rules", message: words }]);
  });
});

describe("a job with elbows above a size", () => {
  const rules = [
    ["Rule", "Value"],
    ["Factory elbows above size, metal", "1/2"],
    ["Factory elbow angles", "90"],
  ];
  const runs = [
    runOf("up 40, east 40, offset 6 up at 30, ahead 40", { name: "B", size: "3/4" }),
    runOf("up 40, east 40", { name: "C", size: "2" }),
  ];

  test("the bench sets up the bent pieces only", () => {
    const table = setupTable(jobOfRuns(runs, SHOES, rules), USUAL_BENCH).slice(1);
    expect(table.map(([run, piece, , bend]) => [run, piece, bend])).toEqual([
      ["B", 2, 1],
      ["B", 2, 2],
    ]);
    expect(setupTable(jobOfRuns(runs), USUAL_BENCH).map(([run, piece, , bend]) => [run, piece, bend])).toContainEqual([
      "B",
      1,
      1,
    ]);
  });

  test("tickets are for what is cut, and say how a piece sits against the elbow before it", () => {
    const { tickets, problems } = jobTickets(jobOfRuns(runs, SHOES, rules));
    expect(problems).toEqual([]);
    expect(tickets.map(({ run, piece, pieces, bends }) => [run.name, piece, pieces, bends.length])).toEqual([
      ["B", 1, 2, 0],
      ["B", 2, 2, 2],
      ["C", 1, 2, 0],
      ["C", 2, 2, 0],
    ]);
    expect(tickets[1]!.ends).toEqual({ datum: "couples to a factory elbow, 90°", far: "" });
    expect(tickets[0]!.ends.far).toBe("couples to a factory elbow, 90°");
    // The elbow turns from up to east, the offset's first bend from east to up again.
    expect(tickets[1]!.join).toEqual({ elbow: 90, roll: 180 });
    expect(tickets[0]!.join).toBeUndefined();
  });
});

test("a piece joins the last bend before it: a piece's past straight pieces, an elbow's past its piece", () => {
  const joins = (route: string) => {
    const run = mixed(route);
    const bends = pullParts(run.pulls[0]!).map((part) => ("cutLength" in part ? part.bends.length : `${part.angle}°`));
    return { bends, joins: ticketsOf(run).map(({ join }) => join) };
  };
  // By hand, clockwise seen along the travel: from north toward east to north toward up is 90° the other way.
  expect(joins("north 40, bend 30 east, ahead 270, bend 30 up, ahead 20")).toEqual({
    bends: [1, 0, 1],
    joins: [undefined, undefined, { piece: 1, roll: -90 }],
  });
  // From up toward east to east toward up is opposite.
  expect(joins("up 40, east 270, offset 6 up at 30, ahead 40")).toEqual({
    bends: [0, "90°", 0, 0, 2],
    joins: [undefined, undefined, undefined, { elbow: 90, roll: 180 }],
  });
  expect(joins("up 40, bend 30 east, ahead 40, box, up 40, bend 30 north, ahead 40").joins).toEqual([
    undefined,
    undefined,
  ]);
});
