/** Wire and pull: what is refused, in words. */
import { pullFactor, pullLimit, pullTension } from "../../functions/wire/pulling";
import { ampacity, boxFill, cover, groundSize } from "../../functions/wire/wiring";
import { cellError } from "../support/cellError";

test.each([
  [() => pullTension("east 100", "EMT", "1/2", 0, 1, 0.3), "#VALUE! weight must be above 0 and at most 1000; got 0."],
  [
    () => pullTension("east 100", "EMT", "1/2", 1, 1, 0.7),
    "#VALUE! diameter must be above 0 in. and at most 0.622 in.; got 0.7 in.",
  ],
  [
    () => pullTension("east 100", "EMT", "1/2", 1, 3, 0.32),
    "#VALUE! the bore must be more than 2 times the cable's diameter; it is 1.94 times.",
  ],
  [
    () => pullTension("east 100", "EMT", "1/2", 1, 1, 0.3, 2),
    "#VALUE! friction must be at least 0.05 and at most 1; got 2.",
  ],
  [
    () => pullFactor("EMT", "2", 0.5, 3, "heaped"),
    '#VALUE! lay must be single, pair, cradled, triangular, diamond or complex; got "heaped".',
  ],
  [() => pullLimit(1, "4/0", "gold"), '#VALUE! metal must be copper or aluminum; got "gold".'],
  [() => boxFill(""), "#VALUE! conductors, grounds or devices must hold something; all are empty."],
  [() => boxFill("wires"), '#VALUE! conductors must be counts and sizes, as in 7 #12, 2 #10; got "wires".'],
  [
    () => boxFill("3 #4"),
    "#N/A No volume is listed for a conductor of 4; sizes are 18, 16, 14, 12, 10, 8 or 6. Boxes of larger ones are sized by PULLBOX.",
  ],
  [() => ampacity("12", 3, 90), "#N/A No correction is listed for 90 °C in the column of 90 °C."],
  [() => ampacity("12", 3, 58, 60), "#N/A No correction is listed for 58 °C in the column of 60 °C."],
  [() => ampacity("12", 3, 30, 80), "#VALUE! column must be 60, 75 or 90; got 80."],
  [() => groundSize(7000), "#N/A breaker must be at most 6000 A; got 7000 A."],
  [() => groundSize(50, "8"), "#VALUE! needed and installed belong together: give both or neither."],
  [() => groundSize(50, "1", "8"), "#VALUE! installed must be at least the needed size, 1; got 8."],
  [
    () => cover("under a building", "direct"),
    "#N/A under a building wants a raceway: no cover is listed for cable without one.",
  ],
])("%# is refused in words", (call, words) => expect(cellError(call)).toBe(words));
