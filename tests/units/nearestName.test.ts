import { nearestName } from "../../src/units/names/nearestName";

const NAMES = [
  "EMT 1/2 strap",
  "EMT 3/4 strap",
  "EMT 1/2 set-screw connector",
  "#12 THHN conductor",
  "Box",
  "IMC 1/2 strap",
];

test.each([
  ["a slip of the pen", "EMT 1/2 srtap", "EMT 1/2 strap"],
  ["a letter that is missing", "EMT 3/4 strp", "EMT 3/4 strap"],
  ["other order of the words", "1/2 EMT strap", "EMT 1/2 strap"],
  ["two slips in a long name", "EMT 1/2 setscrew conector", "EMT 1/2 set-screw connector"],
])("%s: %s is %s", (_why, written, meant) => {
  expect(nearestName(written, NAMES)).toBe(meant);
});

test.each([
  ["another size is another thing", "EMT 1 strap"],
  ["a wire of another size too", "#10 THHN conductor"],
  ["a short word may be another word", "Bin"],
  ["another raceway is another thing", "PVC 1/2 strap"],
  ["nothing like it", "EMT 1/2 expansion fitting"],
])("%s: %s is left alone", (_why, written) => {
  expect(nearestName(written, NAMES)).toBeUndefined();
});
