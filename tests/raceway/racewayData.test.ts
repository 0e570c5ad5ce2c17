import { InputError, NotListedError } from "../../src/units/errors";
import { dimension, sizesOf } from "../../src/raceway/dimensions";
import { RACEWAYS } from "../../src/raceway/raceway";
import { ITEMS, racewayData } from "../../src/raceway/racewayData";
import texts from "../../src/raceway/data/sources.json";

test.each([
  ["outside diameter", 1.315],
  ["inside diameter", 1.063],
  ["wall", 0.126],
  ["area", 0.887],
  ["weight", 161],
  ["minimum radius", 5.75],
  ["minimum radius other", 6],
  ["metric designator", 27],
  ["stick length", 119],
  ["coupling length", 2],
  ["thread length", 0.6828],
  ["threads per inch", 11.5],
  ["Outside  Diameter", 1.315],
  ["minimum radius, other", 6],
])("RMC 1: %s", (item, value) => {
  expect(racewayData("RMC", "1", item)).toBe(value);
});

test("an item's source is told in words", () => {
  expect(racewayData("EMT", "1", "weight source")).toMatch(/^Steel Tube Institute/);
  expect(racewayData("RMC", "1", "weight source")).toBe("ANSI C80.1, rigid steel conduit, from memory");
  expect(racewayData("RMC", "1", "minimum radius other source")).toBe("NEC chapter 9, table 2, from memory");
});

test("every value of every raceway, size and item has a source that is listed, and every listed source is used", () => {
  const used = new Set<string>();
  for (const raceway of RACEWAYS) {
    for (const size of sizesOf(raceway)) {
      for (const item of Object.keys(ITEMS)) {
        try {
          expect(racewayData(raceway, size, item)).toBeGreaterThan(0);
          used.add(racewayData(raceway, size, `${item} source`) as string);
        } catch (error) {
          expect(error).toBeInstanceOf(NotListedError);
        }
      }
    }
  }
  const elsewhere = [
    "rigid on EMT shoe",
    "IMC on EMT shoe",
    "NEC table 5",
    "take-up print",
    "take-up memory",
    "take-up practice",
  ];
  const expected = Object.entries(texts).flatMap(([key, text]) => (elsewhere.includes(key) ? [] : [text]));
  expect([...used].sort()).toEqual(expected.sort());
});

const ASKED =
  "outside diameter, inside diameter, wall, area, weight, minimum radius, minimum radius other, metric designator, " +
  "stick length, coupling length, socket depth, elbow radius, elbow straight end, thread length or threads per inch";

test.each([
  ["colour", `item must be ${ASKED}; got "colour".`],
  ["source", `item must be ${ASKED}; got "source".`],
  ["constructor", `item must be ${ASKED}; got "constructor".`],
  [null, `item must be ${ASKED}; got an empty cell.`],
  [3, `item must be ${ASKED}; got 3.`],
])("item %p is refused", (item, message) => {
  expect(() => racewayData("EMT", "1", item)).toThrow(new InputError(message));
});

test.each([
  ["EMT", "5", "minimum radius", /^EMT is not listed in size 5; its sizes are 1\/2, .*, 4\.$/],
  [
    "EMT",
    "1",
    "thread length",
    /^No thread is listed for EMT; only IMC, RMC, Aluminum RMC, Stainless RMC, PVC-coated RMC have threaded ends\.$/,
  ],
  ["PVC 40", "1", "threads per inch", /^No thread is listed for PVC 40;/],
  ["FMC", "1", "stick length", /^FMC comes in coils and is bought by the foot: it has no stick\.$/],
  ["FMC", "1", "elbow straight end", /^FMC is laid by hand: it has no elbows\.$/],
  ["RTRC", "1", "elbow straight end", /^No straight end is listed for elbows of RTRC;/],
  ["RTRC", "1", "socket depth", /^No socket depth is listed for RTRC;/],
  ["Stainless RMC", "1", "weight", /^No weight is listed for Stainless RMC 1\.$/],
  ["PVC-coated RMC", "1", "weight", /^No weight is listed for PVC-coated RMC 1\.$/],
  ["PVC-coated RMC", "1", "wall", /^No wall is listed for PVC-coated RMC 1\.$/],
] as const)("%s %s %s is not listed", (raceway, size, item, message) => {
  expect(() => racewayData(raceway, size, item)).toThrow(NotListedError);
  expect(() => racewayData(raceway, size, item)).toThrow(message);
});

test("a larger size is larger in every way", () => {
  for (const raceway of RACEWAYS) {
    for (const which of ["outsideDiameter", "insideDiameter", "area"] as const) {
      if (raceway === "RTRC" && which !== "outsideDiameter") continue; // none is listed
      const values = sizesOf(raceway).map((size) => dimension(raceway, size, which).value);
      expect(values.every((value, index) => index === 0 || value > values[index - 1]!)).toBe(true);
    }
  }
});
