import { jobCuts } from "../../../src/takeoff/reports/jobCuts";
import { takeoff } from "../../../src/takeoff/lines/takeoff";
import { demoRuns } from "../../../workbench/demo/ferryTerminal";
import { quantityOf, records, rowWhere, runsRange } from "../tables";

const straight = (Run: string, inches: number, more: Record<string, string | number> = {}) => ({
  Run,
  Route: `east ${inches}`,
  ...more,
});

test("one plan for each raceway and size, in the trade's order, with the pieces named", () => {
  const table = jobCuts(
    runsRange(
      straight("B", 50, { Quantity: 2 }),
      straight("C", 70, { Raceway: "IMC", Size: "3/4" }),
      straight("A", 30),
    ),
  );
  expect(table[0]).toEqual([
    "Raceway",
    "Size",
    "Sticks",
    "Stick",
    "Cut",
    "Left over",
    "For",
    "Note",
    "Drop",
    "Drop to",
  ]);
  expect(table.slice(1).map((row) => [row[0], row[1], row[2], row[4], row[6]])).toEqual([
    ["EMT", "1/2", 2, "2 sticks to buy; at least 2 needed: proven least", ""],
    ["EMT", "1/2", 1, expect.stringMatching(/50"/), expect.stringContaining("B/1")],
    ["EMT", "1/2", 1, expect.stringMatching(/"/), expect.stringMatching(/./)],
    ["IMC", "3/4", 1, "1 stick to buy; at least 1 needed: proven least", ""],
    ["IMC", "3/4", 1, '70"', "C/1"],
    ["Total", "", 3, "3 sticks to buy; proven least", ""],
  ]);
});

test("every piece of the job is named once, as often as its run's quantity", () => {
  const named = new Map<string, number>();
  for (const { For } of records(jobCuts(demoRuns.map((row) => [...row])))) {
    for (const label of String(For).split(/[,;] /).filter(Boolean)) {
      const [name = "", times = "1"] = label.split(" ×");
      named.set(name, (named.get(name) ?? 0) + Number(times));
    }
  }
  const runs = records(demoRuns.map((row) => row.map((cell) => cell ?? ""))).filter(({ Run }) => Run !== "PR-09");
  const conduits = runs.flatMap(({ Run, Quantity, Rack }) => {
    const count = Number.parseInt(String(Rack), 10);
    const names = Rack === "" ? [Run] : Array.from({ length: count }, (_, at) => `${Run}-${at + 1}`);
    return names.map((name) => ({ name, Quantity }));
  });
  expect(conduits).toHaveLength(runs.length + 2);
  for (const { name, Quantity } of conduits) {
    const pieces = [...named].filter(([piece]) => piece.startsWith(`${name}/`));
    expect(pieces.length).toBeGreaterThan(0);
    for (const piece of pieces) expect(piece).toEqual([piece[0], Quantity]);
  }
});

test("sticks are as many as the take-off orders", () => {
  const demo = demoRuns.map((row) => [...row]);
  const order = takeoff(demo);
  for (const plan of records(jobCuts(demo)).filter(({ Stick }) => Stick === "all")) {
    expect(plan["Sticks"]).toBe(quantityOf(order, `${plan["Raceway"]} ${plan["Size"]} conduit, 10 ft stick`));
  }
});

test("stock: offcuts of the right raceway and size are used, others are not", () => {
  const stock = [
    ["Raceway", "Size", "Length", "On hand"],
    ["EMT", "1/2", 60, 1],
    ["EMT", "3/4", 60, 9],
  ];
  const table = jobCuts(runsRange(straight("A", 55, { Quantity: 3 })), { stock });
  expect(rowWhere(table, { Stick: '60" on hand' })).toMatchObject({ Sticks: 1, For: "A/1" });
  expect(rowWhere(table, { Stick: "all" })["Note"]).toContain("1 of the sticks on hand, 1 to buy");
});

test("without stock, runs with 20 ft sticks are cut from these", () => {
  const table = jobCuts(runsRange(straight("A", 200, { Stick: 240 }), straight("B", 100)));
  expect(records(table).map((row) => [row["Sticks"], row["Stick"], row["For"]])).toEqual([
    [1, "all", ""],
    [1, '120"', "B/1"],
    [1, "all", ""],
    [1, '240"', "A/1"],
    [2, "", ""],
  ]);
});

describe("the total of all plans", () => {
  const table = (stock: unknown[][], ...runs: Parameters<typeof runsRange>) =>
    records(jobCuts(runsRange(...runs), { stock: [["Raceway", "Size", "Length", "On hand", "Price"], ...stock] }));
  const emt = straight("A", 110, { Quantity: 2 });
  const imc = straight("B", 100, { Raceway: "IMC", Size: "3/4" });
  const rmc = straight("C", 130, { Raceway: "RMC", Size: "1", Stick: 240 });

  test("sticks and cost add up, offcuts cost nothing, waste is of all feet", () => {
    const [total] = table([["EMT", "1/2", 120, null, 7.5], ["IMC", "3/4", 120, null, 20], ["IMC", "3/4", 101, 1, null]], emt, imc).slice(-1); // prettier-ignore
    // Two sticks at 7.50; the IMC comes from the offcut. 2 × (120 − 110) + (101 − 100) in. of 341 are lost.
    expect(total).toMatchObject({ Raceway: "Total", Sticks: 3, Cut: "2 sticks to buy for 15.00; proven least" });
    expect(total!["Note"]).toBe("waste 1.75 ft, 6.2 %; 1 of the sticks on hand, 2 to buy");
  });

  test("sticks without a price, and what could not be planned, are named", () => {
    const [total] = table([["EMT", "1/2", 120, null, 7.5], ["RMC", "1", 120, null, 30]], emt, imc, rmc).slice(-1); // prettier-ignore
    expect(total!["Cut"]).toBe("3 sticks to buy for 15.00, without IMC 3/4, which have no price; proven least");
    expect(total!["Note"]).toMatch(/; without RMC 1, not planned$/);
  });

  test("one plan needs no total", () => {
    expect(table([], emt).map(({ Raceway }) => Raceway)).not.toContain("Total");
  });
});

test("a cut piece takes its raceway's allowance, a whole stick none", () => {
  const rules = [
    ["Rule", "Value"],
    ["Cut allowance per piece, RMC", 0.75],
  ];
  const rmc = { Raceway: "RMC", Size: "1" };
  const table = jobCuts(runsRange(straight("A", 119, rmc), straight("B", 50, rmc)), { rules });
  expect(
    records(table)
      .slice(1)
      .map((row) => [row["Cut"], row["For"]]),
  ).toEqual([
    ['119"', "A/1"],
    ['50-3/4"', "B/1"],
  ]);
});

test("kerf and shortest offcut come from the arguments before the rules", () => {
  const runs = runsRange(straight("A", 40, { Quantity: 3 }));
  const rules = [
    ["Rule", "Value"],
    ["Saw kerf", 0],
  ];
  const sticks = (ranges: object) => rowWhere(jobCuts(runs, ranges), { Stick: "all" })["Sticks"];
  expect([sticks({}), sticks({ rules }), sticks({ kerf: 0 }), sticks({ rules, kerf: 0.0625 })]).toEqual([2, 1, 1, 2]);
});

test("a plan that cannot be made and rows that cannot be read are told; the others stand", () => {
  const stock = [
    ["Raceway", "Size", "Length", "Price"],
    ["EMT", "1/2", 90, 4],
    ["IMC", "1", "long", 4],
    ["RMC", "1", 120, 9],
    ["RMC", "1", 240, null],
  ];
  const table = jobCuts(
    runsRange(
      straight("A", 100),
      straight("B", 100, { Raceway: "IMC", Size: "1" }),
      straight("C", 100, { Raceway: "RMC", Size: "1" }),
      { Run: "D", Route: "sideways" },
      straight("E", 40, { Conductors: "many" }),
    ),
    { stock },
  );
  const said = records(table).filter(({ Stick }) => /^not /.test(String(Stick)));
  expect(said.map((row) => [row["Raceway"], row["Stick"], row["Note"]])).toEqual([
    ["EMT", "not planned", expect.stringContaining(`at most the longest stick, 90"; got 100"`)],
    ["RMC", "not planned", expect.stringContaining("must have a price when others have one")],
    ["", "not cut: D", expect.stringContaining("step 1")],
    ["", "not read", expect.stringContaining("stock row 3: Length must be")],
  ]);
  expect(rowWhere(table, { Raceway: "IMC", Stick: "all" })["Sticks"]).toBe(1);
});
