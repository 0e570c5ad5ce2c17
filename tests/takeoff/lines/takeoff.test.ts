/**
 * Quantities worked out by hand. With a radius of 4 in. a 90 saves 4·(2 − π/2) = 1.7168 in. of conduit; straps stand
 * within 3 ft of each end and at most 10 ft apart.
 */
import { takeoff } from "../../../src/takeoff/lines/takeoff";
import { quantityOf, records, rowWhere, runsRange, shoesRange } from "../tables";

const SAVED = 4 * (2 - Math.PI / 2);
/** Feet are held to this [ft]. */
/** Straight conduit at each end of an elbow of rigid 1 [in]: ANSI C80.1, from memory. */
const ELBOW_END = 1.875;
const FEET = 9;
const shoes = shoesRange(["EMT", "1/2", 4], ["RMC", "1", 5.75], ["PVC 40", "1", 5.75]);
const items = (table: (string | number)[][]) => records(table).map((row) => row["Item"]);

describe("a run of EMT, three times", () => {
  const run = { Run: "A", Route: "up 36, east 60", Quantity: 3, From: "Box 7", To: "Panel A" };
  const table = () => takeoff(runsRange(run), { shoes });

  test("conduit is legs less gains, times the quantity", () => {
    expect(quantityOf(table(), "EMT 1/2 conduit")).toBeCloseTo((3 * (96 - SAVED)) / 12, FEET);
  });

  test.each([
    ["EMT 1/2 conduit, 10 ft stick", 3],
    ["EMT 1/2 set-screw connector", 6],
    ["EMT 1/2 strap", 6],
    ["EMT 1/2 bend", 3],
    ["Box", 1],
  ])("%s: %d", (item, quantity) => {
    expect(quantityOf(table(), item)).toBe(quantity);
  });

  test("there is no other line", () => {
    expect(items(table())).toHaveLength(6);
  });
});

describe("a stick gives several pieces", () => {
  const sticks = (length: number, quantity: number, kerf?: number) => {
    const rules = [["Rule", "Value"], ...(kerf === undefined ? [] : [["Saw kerf", kerf]])];
    const table = takeoff(runsRange({ Run: "A", Route: `east ${length}`, Quantity: quantity }), { rules });
    return quantityOf(table, "EMT 1/2 conduit, 10 ft stick");
  };

  test("3 x 39 in. come from one, the fourth opens another", () => {
    expect([sticks(39, 3), sticks(39, 4)]).toEqual([1, 2]);
  });

  test("3 x 40 in. only where the saw takes nothing", () => {
    expect([sticks(40, 3, 0), sticks(40, 3)]).toEqual([1, 2]);
  });
});

test("20 ft sticks are counted apart from 10 ft ones", () => {
  const table = takeoff(runsRange({ Run: "A", Route: "east 30'", Stick: 240 }, { Run: "B", Route: "east 15'" }));
  expect(quantityOf(table, "EMT 1/2 conduit, 20 ft stick")).toBe(2);
  expect(quantityOf(table, "EMT 1/2 conduit, 10 ft stick")).toBe(2);
  expect(quantityOf(table, "EMT 1/2 set-screw coupling")).toBe(2);
});

describe("rigid: couplings come with the sticks", () => {
  test("29 ft 9 in. straight: 3 sticks of 119 in. bring 3 couplings for 2 joints", () => {
    const table = takeoff(runsRange({ Run: "R", Raceway: "rigid", Size: "1", Route: "east 29' 9" }), { shoes });
    expect(quantityOf(table, "RMC 1 threaded coupling, with the sticks")).toBe(2);
    expect(rowWhere(table, { Item: "RMC 1 threaded coupling" })).toMatchObject({
      Quantity: 0,
      Note: "2 needed, 3 come with the sticks",
    });
    expect([quantityOf(table, "RMC 1 locknut"), quantityOf(table, "RMC 1 bushing")]).toEqual([4, 2]);
  });

  test("with threadless fittings the joints need couplings of their own", () => {
    const run = { Run: "R", Raceway: "RMC", Size: "1", Route: "east 29' 9", Fittings: "compression" };
    const table = takeoff(runsRange(run), { shoes });
    expect(quantityOf(table, "RMC 1 compression coupling")).toBe(2);
    expect(items(table)).not.toContain("RMC 1 threaded coupling, with the sticks");
  });

  test("short pieces between factory elbows need more couplings than their sticks bring", () => {
    const run = { Run: "R", Raceway: "RMC", Size: "1", Route: "up 40, east 40, down 40" };
    const rules = [
      ["Rule", "Value"],
      ["Factory elbows above size, metal", "3/4"],
    ];
    const table = takeoff(runsRange(run), { shoes, rules });
    // 2 elbows take 2 x 2 x (5.75 + 1.875) in. of the legs: 32.375, 24.75 and 32.375 in. are left, all from one stick.
    expect(quantityOf(table, "RMC 1 conduit")).toBeCloseTo((120 - 4 * (5.75 + ELBOW_END)) / 12, FEET);
    expect(quantityOf(table, "RMC 1 conduit, 10 ft stick")).toBe(1);
    expect(quantityOf(table, "RMC 1 90° elbow")).toBe(2);
    expect(quantityOf(table, "RMC 1 threaded coupling, with the sticks")).toBe(1);
    expect(quantityOf(table, "RMC 1 threaded coupling")).toBe(3);
    expect(items(table)).not.toContain("RMC 1 bend");
  });

  test("an angle without a factory elbow is bent", () => {
    const run = { Run: "R", Raceway: "RMC", Size: "1", Route: "up 40, bend 25 east, ahead 40, bend 45 east, ahead 40" };
    const rules = [
      ["Rule", "Value"],
      ["Factory elbows above size, metal", "3/4"],
    ];
    const table = takeoff(runsRange(run), { shoes, rules });
    expect(quantityOf(table, "RMC 1 bend")).toBe(1);
    expect(quantityOf(table, "RMC 1 45° elbow")).toBe(1);
  });
});

describe("factory elbows need no shoe", () => {
  // NEC chapter 9, table 2, one-shot and full-shoe benders: 9-1/2 in. for trade size 2 (from memory).
  const run = { Run: "F", Size: "2", Route: "up 40, east 90" };

  test("sizes the shop has no shoe for are counted once their bends are bought", () => {
    const rules = [
      ["Rule", "Value"],
      ["Factory elbows above size, metal", "1-1/4"],
    ];
    const table = takeoff(runsRange(run), { rules });
    expect(quantityOf(table, "EMT 2 conduit")).toBeCloseTo((130 - 2 * 9.5) / 12, FEET);
    expect(rowWhere(table, { Item: "EMT 2 90° elbow" })).toMatchObject({
      Quantity: 1,
      Note: "laid out at 9.5 in. radius",
    });
    expect(quantityOf(table, "EMT 2 set-screw coupling")).toBe(2);
  });

  test("where a rule has the shop bend every size, the run is named as not counted", () => {
    const rules = [
      ["Rule", "Value"],
      ["Factory elbows above size, metal", "none"],
    ];
    expect(rowWhere(takeoff(runsRange(run), { rules }), { Item: "not counted: F" })["Note"]).toContain(
      "no built-in shoe for EMT 2",
    );
  });

  test("bends of PVC are elbows unless the rule says otherwise", () => {
    const pvc = runsRange({ ...run, Raceway: "PVC 40" });
    expect(quantityOf(takeoff(pvc), "PVC 40 2 90° elbow")).toBe(1);
    const rules = [
      ["Rule", "Value"],
      ["Factory elbows above size, PVC", "none"],
    ];
    expect(items(takeoff(pvc, { rules }))).toEqual(["not counted: F"]);
  });
});

describe("PVC", () => {
  const table = () =>
    takeoff(runsRange({ Run: "P", Raceway: "PVC 40", Size: "1", Route: "east 100', up 40" }), { shoes });

  test("joints use the bells of the sticks; ends take an adapter and a locknut", () => {
    expect(quantityOf(table(), "PVC 40 1 terminal adapter")).toBe(2);
    expect(quantityOf(table(), "PVC 40 1 locknut")).toBe(2);
    expect(quantityOf(table(), "PVC 40 1 coupling")).toBe(0);
  });

  test("expansion: 100 ft at 60 °F moves 2.4 in., one fitting; 40 in. moves 0.08 in., none", () => {
    expect(quantityOf(table(), "PVC 40 1 expansion fitting")).toBe(1);
  });

  test("a greater change of temperature takes more fittings: 4.9 in. of a travel of 4", () => {
    const rules = [
      ["Rule", "Value"],
      ["Expansion temperature change", 120],
    ];
    const hot = takeoff(runsRange({ Run: "P", Raceway: "PVC 40", Size: "1", Route: "east 100', up 40" }), {
      shoes,
      rules,
    });
    expect(quantityOf(hot, "PVC 40 1 expansion fitting")).toBe(2);
  });
});

test("conductors: the run, 3 ft at each end, 2 ft at each pull box, times count and quantity", () => {
  const table = takeoff(
    runsRange({ Run: "A", Route: "east 20', box, east 10'", Quantity: 2, Conductors: "3 #10 THHN, 1 #12 THHN" }),
  );
  expect(quantityOf(table, "#10 THHN conductor")).toBeCloseTo(3 * 2 * (30 + 6 + 2), FEET);
  expect(quantityOf(table, "#12 THHN conductor")).toBeCloseTo(2 * (30 + 6 + 2), FEET);
});

describe("grouping", () => {
  const runs = runsRange(
    { Run: "A", Job: "Pier 10", Area: "East", Route: "east 40" },
    { Run: "B", Job: "Pier 9", Area: "East", Route: "east 50" },
    { Run: "C", Job: "Pier 9", Area: "East", Route: "east 60", From: "JB-1", To: "JB-2" },
    { Run: "D", Job: "Pier 9", Area: "Dock", Route: "east 70", From: "JB-2" },
  );

  test("the columns stand first, in the order asked for, and labels are sorted as people do", () => {
    const table = takeoff(runs, { by: "area, job" });
    expect(table[0]).toEqual(["Area", "Job", "Item", "Unit", "Quantity", "Note"]);
    const conduit = records(table).filter((row) => row["Item"] === "EMT 1/2 conduit");
    expect(conduit.map((row) => [row["Area"], row["Job"], Math.round(Number(row["Quantity"]) * 12)])).toEqual([
      ["Dock", "Pier 9", 70],
      ["East", "Pier 9", 110],
      ["East", "Pier 10", 40],
    ]);
  });

  test("a box that two groups share is counted in the first of them only", () => {
    const boxes = records(takeoff(runs, { by: "Area" })).filter((row) => row["Item"] === "Box");
    expect(boxes.map((row) => [row["Area"], row["Quantity"]])).toEqual([
      ["Dock", 1],
      ["East", 1],
    ]);
  });

  test("grouped by raceway and size, boxes belong to neither", () => {
    expect(rowWhere(takeoff(runs, { by: "Raceway, Size" }), { Item: "Box" })).toMatchObject({ Raceway: "", Size: "" });
  });

  test("an unknown column is refused with the known ones", () => {
    expect(() => takeoff(runs, { by: "Job, Color" })).toThrow(
      'by must name columns out of Job, Area, Raceway, Size, Run, From, To, Date, Crew, Phase, Floor, Height, Alternate, Typical, Where; got "Color".',
    );
  });
});

describe("grouping by a range of names", () => {
  const runs = runsRange({ Run: "A", Job: "Pier", Area: "East", Route: "east 40" });

  test("empty cells and empty places between commas are passed over, a name given twice counts once", () => {
    const headers = ["Job", "Area", "Item", "Unit", "Quantity", "Note"];
    for (const by of [[["Job", null, "Area", ""]], "Job,, Area,", "Job; Area; job"]) {
      expect(takeoff(runs, { by })[0]).toEqual(headers);
    }
  });

  test("none stands alone", () => {
    expect(takeoff(runs, { by: "None" })[0]![0]).toBe("Item");
    expect(() => takeoff(runs, { by: "none, Job" })).toThrow('got "none".');
  });
});

describe("conductors", () => {
  const run = { Run: "A", Route: "east 20'", Conductors: "2 250 THHN + 1 1/0 XHHW + 1 300 THHN + 1 4/0 THHN" };

  test("sizes from 250 on are kcmil, smaller ones AWG; they are counted in feet, after all else", () => {
    // 20 ft and 3 ft at each end.
    expect(takeoff(runsRange(run)).slice(-4)).toEqual([
      ["#1/0 XHHW conductor", "ft", 26, ""],
      ["#4/0 THHN conductor", "ft", 26, ""],
      ["250 kcmil THHN conductor", "ft", 52, ""],
      ["300 kcmil THHN conductor", "ft", 26, ""],
    ]);
  });

  test("they are bought and pulled: prices and minutes find them", () => {
    const prices = [
      ["Item", "Unit", "Price"],
      ["250 kcmil THHN conductor", "M ft", 5000],
    ];
    const labor = [
      ["Operation", "Minutes"],
      ["conductor", 0.5],
    ];
    expect(rowWhere(takeoff(runsRange(run), { prices, labor }), { Item: "250 kcmil THHN conductor" })).toMatchObject({
      ...{ "Unit price": 5, Extension: 52 * 5, Minutes: 0.5 },
      Hours: 26 / 60,
    });
  });

  test("what cannot be read names its column", () => {
    const table = takeoff(runsRange({ ...run, Conductors: "many" }));
    expect(rowWhere(table, { Item: "not counted: conductors of A" })["Note"]).toMatch(/^Conductors must be count, /);
  });
});

describe("factory elbows above a size", () => {
  const rules = [
    ["Rule", "Value"],
    ["Factory elbows above size, metal", "3/4"],
  ];

  test.each([
    ["1/2", 1, 0],
    ["3/4", 1, 0],
    ["1", 0, 1],
  ])("%s: %d bent, %d bought", (Size, bent, bought) => {
    const table = takeoff(runsRange({ Run: "R", Size, Route: "up 40, east 40" }), { rules });
    const count = (item: string) => (items(table).includes(item) ? quantityOf(table, item) : 0);
    expect([count(`EMT ${Size} bend`), count(`EMT ${Size} 90° elbow`)]).toEqual([bent, bought]);
  });

  test("a bend between elbows is part of its stretch of conduit", () => {
    const run = { Run: "R", Raceway: "RMC", Size: "1", Route: "up 40, bend 25 east, ahead 40, bend 45 east, ahead 40" };
    const table = takeoff(runsRange(run), { shoes, rules });
    const tangent = (angle: number) => 5.75 * Math.tan((angle * Math.PI) / 360);
    const arc = (5.75 * 25 * Math.PI) / 180;
    // Legs of 40 less the setbacks at both corners and the elbow's straight ends, and the arc of the bend.
    const elbow = tangent(45) + ELBOW_END;
    const stretches = [40 - tangent(25) + arc + 40 - tangent(25) - elbow, 40 - elbow];
    expect(quantityOf(table, "RMC 1 conduit")).toBeCloseTo((stretches[0]! + stretches[1]!) / 12, FEET);
    // Two stretches and an elbow between: two couplings, one of which comes with the only stick.
    expect(quantityOf(table, "RMC 1 threaded coupling, with the sticks")).toBe(1);
  });
});

test("how many sticks are needed at least is said where their number is not proven", () => {
  // More pieces than are planned for: 119 one to a stick, 59 two. With a cut each that is 127 and 63 times 15 sixteenths,
  // of which a stick holds 127: by length alone 75000 x (127 + 63) / 127.
  const table = takeoff(
    runsRange({ Run: "A", Route: "east 119", Quantity: 75_000 }, { Run: "B", Route: "east 59", Quantity: 75_000 }),
  );
  expect(rowWhere(table, { Item: "EMT 1/2 conduit, 10 ft stick" })).toMatchObject({
    Quantity: 112_500,
    Note: "at least 112205 are needed",
  });
});

describe("PVC 80 is PVC, too", () => {
  const pvc = (Raceway: string) => takeoff(runsRange({ Run: "P", Raceway, Size: "1", Route: "east 100', up 40" }));

  test.each(["PVC 40", "PVC 80"])("%s: elbows are bought, expansion fittings counted", (raceway) => {
    expect(quantityOf(pvc(raceway), `${raceway} 1 expansion fitting`)).toBe(1);
    expect(quantityOf(pvc(raceway), `${raceway} 1 90° elbow`)).toBe(1);
  });
});

describe("conduit between factory elbows", () => {
  const rules = [
    ["Rule", "Value"],
    ["Factory elbows above size, metal", "3/4"],
  ];
  /** Feet of conduit, and couplings in all: those to buy and those with the sticks. */
  const taken = (route: string, radius = 5.75) => {
    const table = takeoff(runsRange({ Run: "R", Raceway: "RMC", Size: "1", Route: route }), {
      ...{ rules, shoes: shoesRange(["RMC", "1", radius]) },
    });
    const couplings = ["RMC 1 threaded coupling", "RMC 1 threaded coupling, with the sticks"];
    const count = couplings.reduce((sum, item) => sum + quantityOf(table, item), 0);
    return [Number((quantityOf(table, "RMC 1 conduit") * 12).toFixed(6)), count];
  };

  test("none between elbows that meet: two pieces, two elbows, three couplings", () => {
    // Two setbacks of 5.75 in. and two straight ends of 1.875 take the whole leg of 15.25 in.
    expect(taken("up 40, east 15.25, down 40")).toEqual([2 * 32.375, 3]);
  });

  test("a stretch just as long as a stick is one piece, a longer one full sticks and a rest", () => {
    expect(taken("east 126.625, up 40")).toEqual([119 + 32.375, 2]);
    expect(taken("east 127.625, up 40")).toEqual([120 + 32.375, 3]);
    // 292.375 in. are two sticks and 54.375 in.; with 32.375 in. and the elbow four couplings.
    expect(taken("east 300, up 40")).toEqual([292.375 + 32.375, 4]);
  });

  test("what is cut to nothing is none: less than 1/32 in. between elbows", () => {
    expect(taken("up 40, east 15.28, down 40")).toEqual([2 * 32.375, 3]);
    expect(taken("up 40, east 15.29, down 40")).toEqual([2 * 32.375 + 0.04, 4]);
  });

  test("elbows have the code's radius whatever the shop's shoe, alone and beside a bend the shop makes", () => {
    const tangent = (angle: number, radius: number) => radius * Math.tan((angle * Math.PI) / 360);
    expect(taken("up 40, east 40", 7)[0]).toBeCloseTo(80 - 2 * 5.75 - 2 * ELBOW_END, 5);
    const arc = (7 * 25 * Math.PI) / 180;
    const both = 120 - 2 * tangent(25, 7) + arc - 2 * tangent(45, 5.75) - 2 * ELBOW_END;
    expect(taken("up 40, bend 25 east, ahead 40, bend 45 east, ahead 40", 7)[0]).toBeCloseTo(both, 5);
  });

  test("elbows are installed, and stand after the couplings", () => {
    const labor = [
      ["Operation", "Minutes"],
      ["elbow", 12],
    ];
    const table = takeoff(runsRange({ Run: "R", Raceway: "RMC", Size: "1", Route: "up 40, east 40" }), {
      rules,
      labor,
    });
    expect(rowWhere(table, { Item: "RMC 1 90° elbow" })).toMatchObject({ Quantity: 1, Hours: 0.2 });
    const places = ["RMC 1 threaded coupling", "RMC 1 90° elbow", "RMC 1 locknut"].map((item) =>
      items(table).indexOf(item),
    );
    expect(places).toEqual([...places].sort((a, b) => a - b));
  });
});

test("no coupling is in a bend: where two sticks could only meet in it, there are three", () => {
  // The bend is from 114 to 120.28 of 234.28 in.; two sticks of 120 meet between 114.28 and 120 in.
  const table = takeoff(runsRange({ Run: "A", Route: "east 118, up 118" }), { shoes });
  expect(quantityOf(table, "EMT 1/2 set-screw coupling")).toBe(2);
});

test("couplings that come with the sticks are as many as the rule says for each", () => {
  const couplings = (each: number) => {
    const rules = [
      ["Rule", "Value"],
      ["Couplings with each stick, RMC", each],
    ];
    const run = { Run: "R", Raceway: "RMC", Size: "1", Route: "up 40, east 40, down 40" };
    const elbows = ["Factory elbows above size, metal", "3/4"];
    const table = takeoff(runsRange(run), { shoes, rules: [...rules, elbows] });
    return ["RMC 1 threaded coupling, with the sticks", "RMC 1 threaded coupling"].map((item) =>
      items(table).includes(item) ? quantityOf(table, item) : "no line",
    );
  };
  // Four couplings are needed, one stick is bought.
  expect([couplings(0), couplings(2), couplings(9)]).toEqual([
    ["no line", 4],
    [2, 2],
    [4, 0],
  ]);
});

describe("which lines belong together", () => {
  test("labels run together by chance are two groups", () => {
    const runs = runsRange(
      { Run: "A", Job: "1", Area: "23", Route: "east 40" },
      { Run: "B", Job: "12", Area: "3", Route: "east 40" },
    );
    const conduit = records(takeoff(runs, { by: "Job, Area" })).filter((row) => row["Item"] === "EMT 1/2 conduit");
    expect(conduit.map((row) => [row["Job"], row["Area"]])).toEqual([
      ["1", "23"],
      ["12", "3"],
    ]);
  });

  test("a box is in the first of its groups, wherever the runs stand", () => {
    const ends = { Route: "east 40", To: "JB-1" };
    const runs = runsRange({ Run: "A", Area: "Dock", ...ends }, { Run: "B", Area: "East", ...ends });
    expect(rowWhere(takeoff(runs, { by: "Area" }), { Item: "Box" })["Area"]).toBe("Dock");
  });

  test("sizes stand as the trade lists them", () => {
    const runs = runsRange(...["1-1/4", "1", "1/2", "3/4"].map((Size) => ({ Run: Size, Size, Route: "east 40" })));
    const conduit = items(takeoff(runs)).filter((item) => String(item).endsWith("conduit"));
    expect(conduit).toEqual(["1/2", "3/4", "1", "1-1/4"].map((size) => `EMT ${size} conduit`));
  });
});

describe("sticks that do not come in sixteenths", () => {
  const sticks = (millimeters: number, Stick: string | number, quantity = 2) => {
    const run = { Run: "A", Route: `east ${millimeters / 25.4}`, Stick, Quantity: quantity };
    const table = takeoff(runsRange(run, { Run: "B", Route: "east 60" }));
    expect(quantityOf(table, "EMT 1/2 conduit, 10 ft stick")).toBe(1);
    return Number(records(table).find(({ Item }) => /9\.8425|8\.3358|8\.3359/.test(String(Item)))?.["Quantity"]);
  };

  test("3 m: counted in tenths of a millimeter, the kerf of 1/16 in. as 1.6 mm", () => {
    // 2 x 1499.2 + 1.6 fill 3000; a tenth more on each does not fit.
    expect([sticks(1499.2, "3000 mm"), sticks(1499.3, "3000 mm")]).toEqual([1, 2]);
    expect([sticks(3000, "3000 mm"), sticks(6000, "3000 mm", 1)]).toEqual([2, 2]);
  });

  test("a length on no grid holds the tenths of a millimeter below it", () => {
    // 100.03 in. are 2540.762 mm: 2 x 1269.5 and 1.6 are 2540.6, 2 x 1269.6 and 1.6 are 2540.8.
    expect([sticks(1269.5, 100.03), sticks(1269.6, 100.03), sticks(2540.762, 100.03)]).toEqual([1, 2, 2]);
  });

  test("of thirty-seconds: two pieces of 40 and 39-31/32 in. with a kerf of 1/32 in.", () => {
    const rules = [
      ["Rule", "Value"],
      ["Saw kerf", 1 / 32],
    ];
    const of = (Stick: number) =>
      takeoff(runsRange({ Run: "A", Route: "east 40", Quantity: 2, Stick }), { rules }).find(([item]) =>
        String(item).endsWith("stick"),
      )![2];
    expect([of(80 + 1 / 32), of(80)]).toEqual([1, 2]);
  });
});

test("runs may be grouped by where they go and when they are done", () => {
  const run = { Run: "A", Route: "east 40", From: "JB-1", To: "JB-2", Date: "2026-05-04", Crew: "Day" };
  expect(takeoff(runsRange(run), { by: "From, To, Date, Crew, Run" })[1]!.slice(0, 6)).toEqual([
    ...["JB-1", "JB-2", "2026-05-04", "Day", "A", "EMT 1/2 conduit"],
  ]);
});
