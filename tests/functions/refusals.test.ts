/** What used to slip through: overlapping arcs, an arrow past the conduit, numbers that are none, limits that read alike. */
import { bendReleased } from "../../functions/bend/bends";
import { kickNinetyOf } from "../../functions/bend/kicks";
import { offsetSpacingOf } from "../../functions/bend/offsets";
import { stubDeductOf, stubMarkOf } from "../../functions/bend/stubs";
import { shoeCalibrate } from "../../functions/bend/testBends";
import { cellError } from "../support/cellError";

test.each([
  [
    () => kickNinetyOf(2, 30, 0.706, 4),
    // By hand: (4 + 4·tan 15°)·sin 30° = 2.5359.
    "#VALUE! rise must be at least 2.5359 in., or the kick of 30° and the 90 of radius 4 in. overlap; got 2 in.",
  ],
  [
    () => stubDeductOf(4, 0.706, -5),
    "#VALUE! arrow lead must be at least -4 in., or the arrow would lie past the back of the conduit bent around the shoe; got -5 in.",
  ],
  [
    () => offsetSpacingOf(1.07179, 30, 4),
    // By hand: 8·(1 − cos 30°) = 1.0717968.
    "#VALUE! rise must be at least 1.0718 in., or the two bends of 30° and radius 4 in. overlap; got 1.07179 in.",
  ],
])("%# is refused in words", (call, words) => expect(cellError(call)).toBe(words));

test("a limit and a value that read alike get more decimals", () => {
  expect(cellError(() => offsetSpacingOf(1.0717967, 30, 4))).toMatch(/at least 1\.0717968 in\..*got 1\.0717967 in\./);
  expect(cellError(() => stubMarkOf(4.99999, 5))).toBe(
    "#VALUE! stub must be above the deduct of 5 in.; got 4.99999 in.",
  );
});

test("a kick just large enough is answered", () => {
  expect(kickNinetyOf(2.536, 30, 0.706, 4)).toBeGreaterThan(0);
});

test("a number that is none is refused, alone and in a table", () => {
  expect(cellError(() => bendReleased(1e308, 0.01, 40))).toMatch(/not a finite number|must be/);
  expect(cellError(() => shoeCalibrate(1e308, 1, 1e308, 1e308, 1))).toMatch(/^#VALUE! /);
});
