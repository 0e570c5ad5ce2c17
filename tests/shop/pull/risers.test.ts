/** Conductors that hang in a vertical raceway: NEC 2023, 300.19(A) and its table, as read. Rises and counts by hand. */
import { aboutSection, findingsOf } from "../../support/codeFindings";

const about = (run: object, edition?: 2020 | 2023) =>
  aboutSection(findingsOf({ Raceway: "RMC", Size: "4", Route: "up 100'", ...run }, [], edition), "300.19(A)");

test("up to the spacing nothing, above it a support at the top, above twice the spacing two", () => {
  // 4/0 copper hangs 80 ft, 500 kcmil 50 ft.
  expect(about({ Conductors: "3 #4/0 XHHW-2", Route: "up 80'" })).toEqual([]);
  expect(about({ Conductors: "3 #4/0 XHHW-2", Route: "up 81'" })[0]).toMatchObject({ weight: "look", rule: "NEC 2023, 300.19(A)" }); // prettier-ignore
  // 100 ft of 50 ft each: one at the top and one half way.
  expect(about({ Conductors: "3 500 kcmil XHHW-2" })[0]!.finding).toBe(
    "its conductors rise 100' 0\" in one stretch; 500 kcmil XHHW-2 may hang 50' 0\" at most: 2 supports, one at the top.",
  );
  expect(about({ Conductors: "3 500 kcmil XHHW-2" }, 2020)[0]!.rule).toBe("NEC 2020, 300.19(A)");
});

test("the conductor that may hang least counts: aluminum hangs farther, a small ground of copper less", () => {
  // Aluminum 4/0: 180 ft; with a bare copper 4, 100 ft.
  expect(about({ Conductors: "3 #4/0 XHHW-2 aluminum", Route: "up 150'" })).toEqual([]);
  expect(about({ Conductors: "3 #4/0 XHHW-2 aluminum, 1 #4 bare", Route: "up 150'" })[0]!.finding).toContain("bare #4 may hang 100'"); // prettier-ignore
});

test("level legs and boxes part a rise; an offset on the way does not", () => {
  const Conductors = "3 #4/0 XHHW-2";
  expect(about({ Conductors, Route: "up 60', east 20', up 60'" })).toEqual([]);
  expect(about({ Conductors, Route: "up 60', box, up 60'" })).toEqual([]);
  expect(about({ Conductors, Route: "down 60', east 20', up 60'" })).toEqual([]);
  expect(about({ Conductors, Route: "up 60', offset 12 east at 30, ahead 60'" })).toHaveLength(1);
  expect(about({ Conductors, Route: "down 90'" })).toHaveLength(1);
  expect(about({ Route: "up 200'" })).toEqual([]);
});
