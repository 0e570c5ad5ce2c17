import { sawLines } from "../../../src/takeoff/saw/sawLines";
import { formatLength } from "../../../src/units/formatLength";

const show = (inches: number): string => formatLength(inches);

test("a pattern says which sticks to take, each cut with its use, and what is left", () => {
  const pieces = [
    { length: 50, count: 2, label: "TH-01/1 ×4" },
    { length: 7.5, count: 1, label: "TH-02/3" },
  ];
  expect(sawLines({ length: 120, count: 2, pieces, remnant: 12.25 }, show)).toEqual([
    "Take 2 sticks of 10' 0\"; from each:",
    "cut 2 at 4' 2\": TH-01/1 ×4",
    'cut 1 at 7-1/2": TH-02/3',
    "left over 1' 0-1/4\"",
  ]);
});

test("one stick on hand, used up", () => {
  const stick = { length: 60, count: 1, label: "on hand", pieces: [{ length: 29.9375, count: 2 }], remnant: 0 };
  expect(sawLines(stick, show)).toEqual([
    "Take 1 stick of 5' 0\" on hand; from it:",
    "cut 2 at 2' 5-15/16\"",
    "nothing left over",
  ]);
});

test("a whole stick is not cut", () => {
  const stick = { length: 120, count: 3, pieces: [{ length: 120, count: 1, label: "DL-02/2 ×3" }], remnant: 0 };
  expect(sawLines(stick, show)[1]).toBe("use it whole, no cut: DL-02/2 ×3");
});
