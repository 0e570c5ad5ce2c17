/**
 * What Where does to straps, cover and expansion. Cover: NEC 2023, table 300.5(A), as read. Expansion of PVC: its table 352.44, as
 * read, 4.06 in. for 100 ft and 100 °F; of steel a fifth of it and of aluminum two fifths (300.7(B), its note, as read).
 */
import { aboutSection, findingsOf } from "../../support/codeFindings";
import { takeoff } from "../../../src/takeoff/lines/takeoff";
import { quantityOf, records, runsRange } from "../../takeoff/tables";

const PVC = { Raceway: "PVC 40", Size: "2", Route: "east 100'" };
const items = (run: Record<string, string | number>) =>
  records(takeoff(runsRange({ Run: "A", Route: "east 60", ...run })));
const named = (run: Record<string, string | number>, words: string) =>
  items(run).filter(({ Item }) => String(Item).endsWith(words));

test("buried and in concrete: no straps and no expansion fittings, of PVC and of metal", () => {
  for (const Raceway of ["PVC 40", "RMC"]) {
    for (const Where of ["buried", "in concrete", "under a road"]) {
      const run = { ...PVC, Raceway, Where, "Temperature change": 120 };
      expect([...named(run, "strap"), ...named(run, "expansion fitting")]).toEqual([]);
      expect(aboutSection(findingsOf({ ...run, Straps: 1 }), "30")).toEqual(
        aboutSection(findingsOf({ ...run, Straps: 1 }), "300.5"),
      );
    }
  }
  // By hand: 1 + ⌈(1200 − 72)/60⌉ = 20 straps on 100 ft in the open.
  expect(quantityOf(takeoff(runsRange({ Run: "A", ...PVC, Where: "exposed" })), "PVC 40 2 strap")).toBe(20);
});

test.each([
  ["general", "PVC 40", "buried", 18],
  ["general", "RMC", "buried", 6],
  ["a road", "RMC", "buried, under a road", 24],
  ["a driveway", "EMT", "dwelling driveway", 18],
  ["concrete", "PVC 80", "under concrete", 12],
])("cover under %s of %s", (_name, Raceway, Where, least) => {
  const about = (Cover: number | string) =>
    aboutSection(findingsOf({ ...PVC, Raceway, Where, Cover }), "300.5").map(({ weight, finding }) => [
      weight,
      finding,
    ]);
  expect(about("")[0]![0]).toBe("look");
  expect(about("")[0]![1]).toContain(`needs at least ${least} in. of cover`);
  expect(about(least - 0.5)[0]![0]).toBe("stop");
  expect(about(least)).toEqual([]);
});

test("the rule of cover is named by its edition, and nothing is asked where the run is not buried", () => {
  const run = { ...PVC, Where: "buried", Cover: 10 };
  expect(findingsOf(run).map(({ rule }) => rule)).toContain("NEC 2023, table 300.5(A)");
  expect(findingsOf(run, [], 2020).map(({ rule }) => rule)).toContain("NEC 2020, table 300.5");
  expect(aboutSection(findingsOf({ ...PVC, Where: "exposed" }), "300.5")).toEqual([]);
  expect(aboutSection(findingsOf({ ...PVC, Where: "under a building" }), "300.5")).toEqual([]);
});

test("a run's own temperature change goes before the rule's", () => {
  // 100 ft of PVC: 4.06 in. over 100 °F, so 2.4 in. over the rule's 60 °F; fittings of 4 in. travel.
  const fittings = (run: object) =>
    named({ ...PVC, ...run }, "expansion fitting").map(({ Quantity }) => Number(Quantity));
  expect([fittings({}), fittings({ "Temperature change": 100 }), fittings({ "Temperature change": 5 })]).toEqual([
    [1],
    [2],
    [],
  ]);
  const [finding] = aboutSection(findingsOf({ ...PVC, Where: "exposed", "Temperature change": 100 }), "352.44");
  expect(finding!.finding).toBe(
    "a straight of 100' 0\" of PVC 40 moves 4.06 in. over 100 °F; the take-off counts 2 expansion fittings.",
  );
});

test("metal takes fittings only where the run says its temperature change, and by a rule that can be set", () => {
  const steel = { Raceway: "RMC", Size: "2", Route: "east 100'", Where: "exposed" };
  expect(named(steel, "expansion fitting")).toEqual([]);
  expect(named({ ...steel, "Temperature change": 100 }, "expansion fitting")[0]!["Quantity"]).toBe(1);
  const [finding] = aboutSection(findingsOf({ ...steel, "Temperature change": 100 }), "300.7(B)");
  expect(finding).toMatchObject({ weight: "look", rule: "NEC 2023, 300.7(B)" });
  // A fifth of PVC's 4.06 in. is 0.81; by the coefficient 0.78.
  expect(finding!.finding).toContain("moves 0.78 in. over 100 °F");
  const rule = ["Expansion fitting from, metal", 1];
  expect(aboutSection(findingsOf({ ...steel, "Temperature change": 100 }, [rule]), "300.7(B)")).toEqual([]);
  expect(aboutSection(findingsOf({ ...steel, Raceway: "Aluminum EMT", "Temperature change": 100 }), "300.7(B)")[0]!.finding) // prettier-ignore
    .toContain("moves 1.56 in. over 100 °F");
});

test("a Where that says nothing costs its row alone, by name", () => {
  expect(findingsOf({ Where: "in the attic" })[0]!.finding).toMatch(/^Where must be exposed, concealed, buried/);
});
