/** Estimating arithmetic against published examples; the source stands beside each. */
import { takeoff } from "../../src/takeoff/lines/takeoff";
import { rowWhere, runsRange } from "../takeoff/tables";

/** Thirteen runs between boxes of their own: 26 boxes. */
const BOXES = 26;
const betweenBoxes = runsRange(
  ...Array.from({ length: BOXES / 2 }, (_, at) => ({
    ...{ Run: `R-${at}`, Route: "east 5'", From: `Outlet ${2 * at}`, To: `Outlet ${2 * at + 1}` },
  })),
);

// M. Holt, newsletter 31 (letterID 2473), extract of an estimating textbook: 26 boxes at $53.70 a hundred are $13.96.
test("extension of a price by the hundred", () => {
  const prices = [
    ["Item", "Unit", "Price"],
    ["Box", "C", 53.7],
  ];
  expect(rowWhere(takeoff(betweenBoxes, { prices }), { Item: "Box" })).toMatchObject({
    ...{ Quantity: BOXES, Extension: 13.96 },
  });
});
