/**
 * Sticks as they come [in]. Lengths and couplings of threaded conduit: ANSI C80.1, from memory (no source seen); what is
 * checked is that they agree with each other and with a finished length of 10 ft, which is in print (C80.1's scope).
 */
import { jobTakeoff } from "../../functions/job/takeoff";
import { jobCutsOf } from "../../functions/job/cuts";
import { dataOf } from "../../functions/job/tables";
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

test("a threaded stick called 10 ft is planned beside millimeters, less than 0.1 mm shorter; what was written is never rounded", () => {
  // 118.25 in. are 3003.55 mm. By hand: 236 in. take two of 3003.5 mm, or one and an offcut of 3000.
  const runs = [
    ["Run", "Raceway", "Size", "Route"],
    ["A", "RMC", "4", "east 236"],
  ];
  const stock = (length: string) => [
    ["Raceway", "Size", "Length", "On hand", "Price"],
    ["RMC", "4", "10'", "buy", 90],
    ["RMC", "4", length, 1, ""],
  ];
  const none = null as never;
  const plan = (length: string, kerf: unknown) => jobCutsOf(runs, stock(length), none, kerf);
  expect(plan("3000 mm", "1.6 mm").map((row) => row[3])).toEqual(["Stick", "all", "3003.5 mm", "3000 mm on hand"]);
  expect(
    plan("1028 mm", "1.6 mm")
      .slice(2)
      .map((row) => [row[2], row[3]]),
  ).toEqual([
    [1, "3003.5 mm"],
    [1, "3003.5 mm"],
  ]);
  // A saw in sixteenths beside an offcut in millimeters is the writer's own: told, not rounded.
  expect(plan("1028 mm", "1/16")[1]![7]).toMatch(/must all be whole numbers of 1\/32 in\., or all of 0\.1 mm/);
  const rules = [["Rule", "Value"], ["Saw kerf", "1.6 mm"]]; // prettier-ignore
  const order = jobTakeoff(runs, [["Item", "Unit", "Price"], ["Strap", "each", 1]], none, none, none, rules, stock("1028 mm")); // prettier-ignore
  expect(order.find(([item]) => item === "RMC 4 conduit, 10 ft stick")?.slice(2, 5)).toEqual([2, 90, 180]);
});

test("a coupling keeps its own length, or the depth of its socket, from a bend", () => {
  expect([couplingSeat("RMC", "4"), couplingSeat("PVC 40", "2"), couplingSeat("EMT", "4")]).toEqual([3.5, 1.125, 1]);
});
