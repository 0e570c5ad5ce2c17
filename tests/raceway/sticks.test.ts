/**
 * Sticks as they come [in]. Lengths and couplings of threaded conduit: ANSI C80.1, from memory (no source seen); what is
 * checked is that they agree with each other and with a finished length of 10 ft, which is in print (C80.1's scope).
 */
import { jobTakeoff } from "../../functions/takeoff";
import { dataOf } from "../../functions/tables";
import { TRADE_SIZES } from "../../src/raceway/tradeSize";
import { couplingSeat, nominalStick, usableStick } from "../../src/raceway/sticks";
import { readStock } from "../../src/takeoff/cuts/cutStock";

test.each(TRADE_SIZES)("RMC %s: stick and half its coupling come to 10 ft within 1/8 in.", (size) => {
  const [length, coupling] = [dataOf("RMC", size, "stick length"), dataOf("RMC", size, "coupling length")];
  expect(Math.abs(length + coupling / 2 - 120)).toBeLessThanOrEqual(0.125);
  expect(dataOf("RMC", size, "stick length source")).toMatch(/from memory/);
});

test("EMT and PVC lie their whole 10 ft; a 20 ft threaded stick lacks as much as one of 10 ft", () => {
  expect([dataOf("EMT", "4", "stick length"), dataOf("PVC 40", "4", "stick length")]).toEqual([120, 120]);
  expect([usableStick("EMT", "4", 240), usableStick("RMC", "4", 240), usableStick("RMC", "4", 119)]).toEqual([
    240, 238.25, 119,
  ]);
  expect([nominalStick("RMC", "4", 238.25), nominalStick("RMC", "4", 100)]).toEqual([240, 100]);
});

test("100 ft of RMC 4 are 11 sticks, not 10; of EMT 4 they are 10", () => {
  const sticks = (raceway: string) => {
    const table = jobTakeoff([
      ["Run", "Raceway", "Size", "Route"],
      ["A", raceway, "4", "east 100'"],
    ]);
    return table.find(([item]) => item === `${raceway} 4 conduit, 10 ft stick`)?.[2];
  };
  expect([sticks("RMC"), sticks("IMC"), sticks("EMT")]).toEqual([11, 11, 10]);
});

test("a length of 10 ft in Stock is what a stick is called; another is taken as it stands", () => {
  const stock = readStock([
    ["Raceway", "Size", "Length"],
    ["RMC", "4", "10'"],
    ["RMC", "4", 118],
    ["EMT", "4", "10'"],
  ]);
  expect(stock.sticksFor("RMC", "4").map(({ length }) => length)).toEqual([118.25, 118]);
  expect(stock.sticksFor("EMT", "4").map(({ length }) => length)).toEqual([120]);
});

test("a coupling keeps its own length, or the depth of its socket, from a bend", () => {
  expect([couplingSeat("RMC", "4"), couplingSeat("PVC 40", "2"), couplingSeat("EMT", "4")]).toEqual([3.5, 1.125, 1]);
});
