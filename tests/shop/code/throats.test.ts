/** Insulated throats and bushings: NEC 300.4(G), 2020 and 2023, as read; which fitting carries them is common practice. */
import { takeoff } from "../../../src/takeoff/lines/takeoff";
import { aboutSection, findingsOf } from "../../support/codeFindings";
import { records, runsRange } from "../../takeoff/tables";

const ends = (run: Record<string, string>): Record<string, unknown> =>
  Object.fromEntries(
    records(takeoff(runsRange({ Run: "A", Route: "east 60, box, east 60", ...run })))
      .filter(({ Item }) => /bushing|connector|adapter/.test(String(Item)))
      .map(({ Item, Quantity }) => [Item, Quantity]),
  );

test("4 AWG takes an insulated throat at every end, 6 AWG none; a large ground alone asks for none", () => {
  const emt = { Raceway: "EMT", Size: "1-1/4" };
  expect(ends({ ...emt, Conductors: "3 #6 THHN, 1 #4 THHN ground" })).toEqual({ "EMT 1-1/4 set-screw connector": 4 });
  expect(ends({ ...emt, Conductors: "3 #4 THHN, 1 #8 THHN" })).toEqual({
    "EMT 1-1/4 set-screw connector, insulated throat": 4,
  });
  expect(ends({ ...emt, Conductors: "3 #6 THHN", Fittings: "compression, insulated" })).toEqual({
    "EMT 1-1/4 compression connector, insulated throat": 4,
  });
});

test("rigid gets insulating bushings, grounding ones too, and an open end keeps its plain one", () => {
  const rmc = { Raceway: "RMC", Size: "2", Conductors: "3 250 kcmil XHHW-2, 1 #4 bare" };
  expect(ends({ ...rmc, To: "open", "Grounding bushing": "from" })).toEqual({
    "RMC 2 insulating bushing": 2,
    "RMC 2 insulating grounding bushing": 1,
    "RMC 2 bushing": 1,
  });
});

test("PVC has a bushing on each adapter", () => {
  expect(ends({ Raceway: "PVC 40", Size: "2", Conductors: "3 #1/0 XHHW-2" })).toEqual({
    "PVC 40 2 terminal adapter": 4,
    "PVC 40 2 insulating bushing": 4,
  });
});

test("Checks names the section by its edition until Fittings says insulated", () => {
  const run = { Size: "2", Raceway: "EMT", Conductors: "3 #4 THHN" };
  const about = (more: object, edition?: 2020) =>
    aboutSection(findingsOf({ ...run, ...more }, [], edition), "300.4(G)");
  expect(about({})[0]).toMatchObject({ rule: "NEC 2023, 300.4(G)", weight: "look" });
  expect(about({}, 2020)[0]!.rule).toBe("NEC 2020, 300.4(G)");
  expect(about({ Fittings: "insulated" })).toEqual([]);
  expect(about({ Conductors: "3 #6 THHN" })).toEqual([]);
  expect(about({ Conductors: "3 sausages" })).toEqual([]);
});
