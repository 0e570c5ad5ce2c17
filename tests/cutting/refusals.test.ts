import { InputError } from "../../src/units/errors";
import { planCuts } from "../../src/cutting/solve";
import type { CutRequest } from "../../src/cutting/model/request";
import { roundUpToSteps, showSteps, stepsToInches, toSteps } from "../../src/cutting/model/grid";

const good: CutRequest = { pieces: [{ length: 640, quantity: 2 }], stocks: [{ length: 1920 }] };

describe("what a cutting plan refuses", () => {
  it.each<[Partial<CutRequest>, string]>([
    [{ stocks: [] }, "stocks must list at least one stick length; got none."],
    [{ pieces: [{ length: 0, quantity: 1 }] }, "length of piece 1 must be a whole number from 1 to 10000000; got 0."],
    [
      { pieces: [{ length: 64.5, quantity: 1 }] },
      "length of piece 1 must be a whole number from 1 to 10000000; got 64.5.",
    ],
    [
      { pieces: [{ length: 64, quantity: -3 }] },
      "quantity of piece 1 must be a whole number from 0 to 10000000; got -3.",
    ],
    [{ kerf: -1 }, "kerf must be a whole number from 0 to 10000000; got -1."],
    [{ kerf: NaN }, "kerf must be a whole number from 0 to 10000000; got NaN."],
    [{ stocks: [{ length: 1920, cost: 0 }] }, "cost of stock 1 must be a whole number from 1 to 10000000; got 0."],
    [
      { stocks: [{ length: 1920, cost: 5 }, { length: 960 }] },
      "stock 2 must have a price when others have one, or none may have; got an empty price.",
    ],
    [{ pieces: [{ length: 1936, quantity: 1 }] }, 'piece length must be at most the longest stick, 120"; got 121".'],
    [{ pieces: [{ length: 9, quantity: 100_001 }] }, "pieces must be at most 100000 together; got 100001."],
  ])("%j", (change, message) => {
    expect(() => planCuts({ ...good, ...change })).toThrow(new InputError(message));
  });
});

describe("the grid", () => {
  it("counts inches in whole steps", () => {
    expect(toSteps(40.25, "1/16", "length")).toBe(644);
    expect(toSteps(40.03125, "1/32", "length")).toBe(1281);
    expect(toSteps(10, "0.1 mm", "length")).toBe(2540); // an inch is 25.4 mm by definition
    expect(stepsToInches(644, "1/16")).toBe(40.25);
  });

  it("refuses what lies between two steps, and names both", () => {
    expect(() => toSteps(40.03, "1/16", "length of piece 3")).toThrow(
      'length of piece 3 must be a whole number of 1/16 in.; got 40.03 in., between 40" and 40-1/16".',
    );
    expect(() => toSteps(NaN, "1/16", "length")).toThrow(InputError);
  });

  it("rounds up only when asked to", () => {
    expect(roundUpToSteps(40.03, "1/16")).toBe(641);
    expect(roundUpToSteps(40.0625, "1/16")).toBe(641);
  });

  it.each([
    [40.03, "1/32", '1/32 in.; got 40.03 in., between 40" and 40-1/32".'],
    [0.001, "0.1 mm", "0.1 mm; got 0.001 in., between 0 mm and 0.1 mm."],
    [1.001, "0.1 mm", "0.1 mm; got 1.001 in., between 25.4 mm and 25.5 mm."],
  ] as const)("names the neighbors on every grid: %d in steps of %s", (inches, grid, message) => {
    expect(() => toSteps(inches, grid, "kerf")).toThrow(`kerf must be a whole number of ${message}`);
  });

  it("takes what is off by the rounding of the machine alone", () => {
    // In binary, ten times 0.1 + 0.2 make a little more than 3.
    expect((0.1 + 0.2) * 10).toBeGreaterThan(3);
    expect(toSteps((0.1 + 0.2) * 10, "1/16", "length")).toBe(48);
    expect(roundUpToSteps((0.1 + 0.2) * 10, "1/16")).toBe(48);
    expect(roundUpToSteps(3.0001, "1/16")).toBe(49);
  });

  it("writes steps as people do", () => {
    expect(showSteps(25, "1/16")).toBe('1-9/16"');
    expect(showSteps(25, "1/32")).toBe('25/32"');
    expect(showSteps(255, "0.1 mm")).toBe("25.5 mm");
  });
});
