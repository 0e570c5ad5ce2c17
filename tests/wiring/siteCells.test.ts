import { InputError } from "../../src/units/errors";
import { readBreaker } from "../../src/wiring/breaker";
import { placeInWords, readPlace, standsFree } from "../../src/wiring/place";
import { readCelsius } from "../../src/units/celsius";

test.each([
  ["exposed", { main: "exposed", wet: false, hot: false }],
  ["Buried", { main: "buried", wet: true, hot: false, under: "general" }],
  ["buried under a road; hot", { main: "buried", wet: true, hot: true, under: "under a road" }],
  ["under a slab", { main: "buried", wet: true, hot: false, under: "under a slab" }],
  ["in concrete", { main: "in concrete", wet: false, hot: false }],
  ["wet", { main: "exposed", wet: true, hot: false }],
  ["concealed and hot place", { main: "concealed", wet: false, hot: true }],
  ["dwelling driveway", { main: "buried", wet: true, hot: false, under: "dwelling driveway" }],
])("Where %p is read", (cell, place) => {
  expect(readPlace(cell)).toEqual(place);
  expect(readPlace(placeInWords(readPlace(cell)))).toEqual(place);
});

const WORDS =
  "exposed, concealed, buried, in concrete, wet or hot, or what is over a buried run: under concrete, under a building, " +
  "under a slab, under a road, dwelling driveway, airport";

test.each([
  ["general", `Where must be ${WORDS}; got "general".`],
  ["in the attic", `Where must be ${WORDS}; got "in the attic".`],
  [12, `Where must be ${WORDS}; got 12.`],
  ["exposed, buried", 'Where must name one place; got "exposed, buried". Part the run where its place changes.'],
  [
    "under a road, under a slab",
    'Where must name one place; got "under a road, under a slab". Part the run where its place changes.',
  ],
])("Where %p is refused", (cell, message) => {
  expect(() => readPlace(cell)).toThrow(new InputError(message));
});

test("only what is neither in the ground nor in concrete is held by straps and free to move", () => {
  expect(["exposed", "concealed", "wet", "buried", "in concrete", "under a road"].map((cell) => standsFree(readPlace(cell)))) // prettier-ignore
    .toEqual([true, true, true, false, false, false]);
  expect(standsFree(undefined)).toBe(true);
});

test.each([
  [60, 60, 1],
  ["60", 60, 1],
  ["60 A", 60, 1],
  ["600 A, 2 sets", 600, 2],
  ["1200 amps in 3 sets", 1200, 3],
])("Breaker %p is read", (cell, amperes, sets) => {
  expect(readBreaker(cell)).toEqual({ amperes, sets });
});

test.each([
  [0, "Breaker must be above 0 and at most 6000; got 0."],
  [6001, "Breaker must be above 0 and at most 6000; got 6001."],
  ["big", 'Breaker must be amperes, as in 60 or 600 A, 2 sets; got "big".'],
  ["60, 0 sets", "Breaker sets must be at least 1; got 0."],
])("Breaker %p is refused", (cell, message) => {
  expect(() => readBreaker(cell)).toThrow(new InputError(message));
});

test("a temperature is °C, or says its unit; °F written as a bare number is out of range, not taken for cool", () => {
  expect([40, "40", "40 °C", "104 F", "104°f", "-4 F"].map((cell) => readCelsius(cell, "Ambient"))).toEqual([40, 40, 40, 40, 40, -20]); // prettier-ignore
  expect(() => readCelsius(110, "Ambient", { max: 100 })).toThrow("Ambient must be at most 100; got 110.");
  expect(() => readCelsius("warm", "Ambient")).toThrow(
    'Ambient must be a temperature in °C, or with its unit, as in 104 F; got "warm".',
  );
});
