/** The arguments of a RUN function, read into a run with nothing but what they say. */
import { buildOneRun, oneRun } from "../../../src/shop/run/oneRun";

test("route, raceway and size; the rest is empty, a stick 10 ft, one of it", () => {
  expect(oneRun(" up 9, east 20", "emt", 0.5)).toEqual({
    ...{ name: "run", job: "", area: "", raceway: "EMT", size: "1/2", route: " up 9, east 20" },
    ...{ quantity: 1, from: "", to: "", conductors: "", stick: 120, date: "", crew: "" },
    ...{ fittings: "", groundingBushing: "" },
  });
});

test.each<[unknown, string]>([
  [null, "an empty cell"],
  [12, "12"],
  ["", "an empty cell"],
  ["   ", '"   "'],
])("a route that is %p is refused, with an example and what was read", (route, got) => {
  expect(() => oneRun(route, "EMT", "1/2")).toThrow(`route must be text, as in up 4', east 12' 6"; got ${got}.`);
});

test("raceway and size are named as the arguments they are", () => {
  expect(() => oneRun("up 9", "copper", "1/2")).toThrow(/^raceway must be .*got "copper"/);
  expect(() => oneRun("up 9", "EMT", "five")).toThrow(/^size must be .*got "five"/);
});

test("the run is worked out with the user's shoe: its radius is that of the bends", () => {
  const table = [
    ["Raceway", "Size", "Radius", "Deduct"],
    ["EMT", "1/2", 4.5, 5.25],
  ];
  const { shoe, pulls } = buildOneRun("up 9, east 20", "EMT", "1/2", table);
  expect([shoe.radius, shoe.deduct, pulls[0]!.parts.bends[0]!.radius]).toEqual([4.5, 5.25, 4.5]);
  expect(buildOneRun("up 9, east 20", "EMT", "1/2", null).shoe.radius).toBe(4);
});
