import type { CutPlan } from "../../src/cutting/checking/plan";
import { planCuts } from "../../src/cutting/solve";
import { verifyPlan } from "../../src/cutting/checking/verify";

const request = {
  pieces: [
    { length: 644, quantity: 17 },
    { length: 1101, quantity: 9 },
    { length: 305, quantity: 21 },
    { length: 479, quantity: 6 },
  ],
  stocks: [{ length: 1920 }, { length: 977, quantity: 2 }],
  kerf: 2,
  minimumOffcut: 100,
};
const tampered = (change: (copy: CutPlan) => void): string[] => {
  const copy = structuredClone(planCuts(request));
  change(copy);
  return verifyPlan(request, copy);
};

/** Lengthens one piece by what is left of its stick (remnant and the kerf before it), and one step more. */
function oneStepTooLong(copy: CutPlan): void {
  const pattern = copy.patterns.find(({ remnant, cuts }) => remnant > 0 && cuts.some((cut) => cut.count === 1))!;
  pattern.cuts.find((cut) => cut.count === 1)!.length += pattern.remnant + request.kerf + 1;
}

/** Pairs only: 70 + 30 fill a stick of 100; beside 65 lies 33, because 16 + 20 would be too long; 20 and 16 are left. */
const paired = {
  pieces: [70, 30, 65, 33, 20, 16].map((length) => ({ length, quantity: 1 })),
  stocks: [{ length: 100 }],
};

describe("verifyPlan", () => {
  it("accepts what the solver returns", () => {
    const plan = planCuts(request);
    expect(plan.proven).toBe(true);
    expect(verifyPlan(request, plan)).toEqual([]);
  });

  it.each<[string, RegExp, (copy: CutPlan) => void]>([
    ["a piece too many", /cut \d+ times too often|longer than its stick/, (p) => void p.patterns[0]!.cuts[0]!.count++],
    ["a piece too few", /cut -\d+ times too often/, (p) => void p.patterns.find((q) => q.cuts.length > 1)!.cuts.pop()],
    ["a whole pattern missing", /times too often/, (p) => void p.patterns.pop()],
    ["half a stick", /whole sticks/, (p) => void (p.patterns[0]!.count = 0.5)],
    ["longer pieces", /longer than its stick/, (p) => void (p.patterns[0]!.cuts[0]!.length += 5000)],
    ["pieces longer than the stick by one step", /is 1 steps longer than its stick/, oneStepTooLong],
    ["a wrong remnant", /wrong remnant/, (p) => void p.patterns[0]!.remnant++],
    ["an offcut used three times", /there are 2/, (p) => void (p.patterns.find((q) => q.stock === 1)!.count += 2)],
    ["an offcut more than there are", /not the request's/, (p) => void (p.stocks[1]!.quantity = 3)],
    ["a longer stick", /not the request's/, (p) => void (p.stocks[0]!.length = 1921)],
    ["a lower cost", /cost is stated/, (p) => void p.cost--],
    ["a lower number of sticks", /sticks is stated/, (p) => void p.sticks--],
    ["less waste", /waste is stated/, (p) => void p.waste--],
    ["a smaller share of waste", /wasteShare is stated/, (p) => void (p.wasteShare /= 2)],
    ["a longer remnant", /longestRemnant is stated/, (p) => void p.longestRemnant++],
    ["a remnant more", /remnants do not follow/, (p) => void p.remnants.push(150)],
    ["a higher bound", /does not prove/, (p) => void p.bound++],
    ["no prices", /does not prove/, (p) => void (p.certificate.prices = [])],
    ["prices in fractions", /whole numbers/, (p) => void (p.certificate.prices[0]![0] = 0.5)],
    ["a price too few", /whole numbers/, (p) => void p.certificate.prices[0]!.pop()],
    ["prices of one piece only", /does not prove/, (p) => void (p.certificate.prices = [[1, 0, 0, 0]])],
    [
      "a pair although there are offcuts",
      /need not be/,
      (p) => p.certificate.pairs.push({ lengths: [1101, 644], count: 1 }),
    ],
    ["proven beside a gap", /proven is stated/, (p) => void p.bound--],
  ])("rejects %s", (_, message, change) => {
    expect(tampered(change).join("; ")).toMatch(message);
  });

  it.each<[string, (pairs: CutPlan["certificate"]["pairs"]) => void]>([
    ["a shorter partner", (pairs) => void (pairs[0]!.lengths[1] = 20)],
    ["no partner where one fits", (pairs) => void (pairs[0]!.lengths[1] = 0)],
    ["a pair taken twice", (pairs) => void pairs[0]!.count++],
    ["a piece there is not", (pairs) => void (pairs[0]!.lengths[0] = 71)],
    [
      "a pair beside which two others fit",
      (pairs) => void pairs.splice(0, pairs.length, { lengths: [33, 65], count: 1 }),
    ],
  ])("rejects pairs with %s", (_, change) => {
    const right = planCuts(paired);
    expect(right.certificate.pairs.length).toBeGreaterThan(0);
    expect(verifyPlan(paired, right)).toEqual([]);
    const copy = structuredClone(right);
    change(copy.certificate.pairs);
    expect(verifyPlan(paired, copy).join()).toMatch(/need not be/);
  });
});
