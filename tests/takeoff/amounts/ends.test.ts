/** What stands at the ends of runs: bushings and boxes. */
import { takeoff } from "../../../src/takeoff/lines/takeoff";
import { trace } from "../../../src/takeoff/reports/trace";
import { quantityOf, records, rowWhere, runsRange, shoesRange } from "../tables";

const shoes = shoesRange(["RMC", "1", 5.75]);
const items = (table: (string | number)[][]) => records(table).map((row) => row["Item"]);

describe("grounding bushings", () => {
  const bushings = (asked: string | number) => {
    const run = { Run: "R", Raceway: "RMC", Size: "1", Route: "east 60, box, east 60", "Grounding bushing": asked };
    const table = takeoff(runsRange(run), { shoes });
    const quantity = (item: string) => (items(table).includes(item) ? quantityOf(table, item) : 0);
    return [quantity("RMC 1 grounding bushing"), quantity("RMC 1 bushing")];
  };

  test.each([
    ["", 0, 4],
    ["no", 0, 4],
    ["None", 0, 4],
    ["false", 0, 4],
    ["to", 1, 3],
    ["yes", 2, 2],
    ["true", 2, 2],
    ["from", 1, 3],
    ["both", 2, 2],
    ["all", 4, 0],
    [3, 3, 1],
  ])("asked for %p: they take the place of plain ones", (asked, grounding, plain) => {
    expect(bushings(asked)).toEqual([grounding, plain]);
  });

  test("more than there are ends, or words that say nothing, are told", () => {
    const notes = ["9", "maybe"].map(
      (asked) =>
        rowWhere(takeoff(runsRange({ Run: "R", Route: "east 60", "Grounding bushing": asked })), {
          Item: "not counted: R",
        })["Note"],
    );
    expect(notes).toEqual([
      "Grounding bushing must be a whole number at least 0 and at most 2; got 9.",
      'Grounding bushing must be no, from, to, both, all or a number up to 2; got "maybe".',
    ]);
  });
});

describe("boxes", () => {
  test("the same name in several runs is one box, whatever its case, and quantity does not multiply it", () => {
    const table = takeoff(
      runsRange(
        { Run: "A", Route: "east 60", From: "JB-1", To: "JB-2", Quantity: 5 },
        { Run: "B", Route: "east 60", From: "jb-2", To: "JB-3" },
        { Run: "C", Route: "east 60", From: "Panel LP-1", To: "existing JB-9" },
        { Run: "D", Route: "east 60", From: "", To: "Panelled box" },
      ),
    );
    expect(quantityOf(table, "Box")).toBe(4);
  });

  test("each before a name is a box for every run of its row, and the panel stays one", () => {
    // Six equal runs from one junction box to six receptacles, and three to three more: 1 + 6 + 3.
    const runs = runsRange(
      { Run: "A", Route: "east 60", From: "JB-1", To: "each receptacle", Quantity: 6 },
      { Run: "B", Route: "east 60", From: "jb-1", To: "Each Receptacle", Quantity: 3 },
      { Run: "C", Route: "east 60", From: "each panel", To: "JB-1", Quantity: 4 },
    );
    expect(quantityOf(takeoff(runs), "Box")).toBe(10);
    expect(trace(runs, "Box").slice(1)).toContainEqual(["A", 2, 1, 6, 6, "each receptacle"]);
    expect(rowWhere(takeoff(runs), { Item: "Box" })["Note"]).toContain(
      "each before a name: one for every run of its row",
    );
  });

  test("the same name in another job is another box", () => {
    const ends = { Route: "east 60", From: "JB-1", To: "JB-2" };
    expect(
      quantityOf(takeoff(runsRange({ Run: "A", Job: "X", ...ends }, { Run: "B", Job: "Y", ...ends })), "Box"),
    ).toBe(4);
  });

  test("each box step is a pull box with two more terminations, times the quantity", () => {
    const table = takeoff(runsRange({ Run: "A", Route: "east 60, box, east 60, box, up 40", Quantity: 2 }));
    expect(quantityOf(table, "EMT 1/2 pull box")).toBe(4);
    expect(quantityOf(table, "EMT 1/2 set-screw connector")).toBe(12);
  });

  test("a run that ends in a box step has that box once: under its name, or as a pull box", () => {
    const [named, nameless] = ["JB-1", ""].map((To) => takeoff(runsRange({ Run: "A", Route: "east 60, box", To })));
    expect(items(named!)).toContain("Box");
    expect(items(named!)).not.toContain("EMT 1/2 pull box");
    expect(quantityOf(nameless!, "EMT 1/2 pull box")).toBe(1);
  });

  test("an open end has no box and no connector, but a bushing", () => {
    const table = takeoff(runsRange({ Run: "A", Route: "east 60", From: "open", To: "JB-1" }));
    expect(quantityOf(table, "EMT 1/2 set-screw connector")).toBe(1);
    expect(quantityOf(table, "EMT 1/2 bushing")).toBe(1);
    expect(quantityOf(table, "Box")).toBe(1);
  });
});

test("an end that is only a dash has no name", () => {
  const table = takeoff(
    runsRange({ Run: "A", Route: "east 60", From: "-", To: "JB-1" }, { Run: "B", Route: "east 60", From: "—" }),
  );
  expect(quantityOf(table, "Box")).toBe(1);
});

test("names in other letters are told apart", () => {
  const table = takeoff(
    runsRange(
      { Run: "A", Route: "east 60", From: "Щит А", To: "Щит Б" },
      { Run: "B", Route: "east 60", From: "Ö", To: "щит а" },
    ),
  );
  expect(quantityOf(table, "Box")).toBe(3);
});

test("a run that begins and ends at one box is at it once, however the name is written", () => {
  const runs = runsRange({ Run: "A", Route: "up 40, east 60", From: "JB-1", To: "jb-1" });
  expect(trace(runs, "Box")[1]).toEqual(["A", 2, 1, 1, 1, "JB-1"]);
  expect(rowWhere(takeoff(runs), { Item: "Box" })["Note"]).toBe(
    "one for each name in From and To; Quantity does not multiply it",
  );
});

test("the rule may name no words at all", () => {
  const rules = [
    ["Rule", "Value"],
    ["Ends that are no boxes", null],
  ];
  const runs = runsRange({ Run: "A", Route: "east 60", From: "Panel A", To: "JB-1" });
  expect([quantityOf(takeoff(runs, { rules }), "Box"), quantityOf(takeoff(runs), "Box")]).toEqual([2, 1]);
});

test.each(["east 60,box", "east 60; BOX ,", "east 60\nbox", "east 60, box;", "east 60, box, north 60"])(
  "%p has one pull box",
  (Route) => {
    expect(quantityOf(takeoff(runsRange({ Run: "A", Route })), "EMT 1/2 pull box")).toBe(1);
  },
);

test("boxes are bought and set: prices and minutes find them, and they stand before the conductors", () => {
  const prices = [
    ["Item", "Price"],
    ["Box", 3],
  ];
  const labor = [
    ["Operation", "Minutes"],
    ["box", 15],
  ];
  const run = { Run: "A", Route: "east 60", From: "JB-1", To: "JB-2", Conductors: "3 #12 THHN" };
  const table = takeoff(runsRange(run), { prices, labor });
  expect(rowWhere(table, { Item: "Box" })).toMatchObject({ Quantity: 2, Extension: 6, Hours: 0.5 });
  expect(items(table).slice(-5, -3)).toEqual(["Box", "#12 THHN conductor"]);
  const none = takeoff(runsRange(run), {
    labor: [
      ["Operation", "Minutes"],
      ["paint", 9],
    ],
  });
  expect(rowWhere(none, { Item: "Total, without what the note names" })["Note"]).toBe(
    "no minutes for conduit, connector, strap, box, conductor",
  );
  expect(records(none).pop()).toMatchObject({
    Item: "without minutes: 5",
    Note: "conduit, connector, strap, box, conductor",
  });
});
