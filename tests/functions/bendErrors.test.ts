/** What a cell says about bad arguments, and that an omitted argument that arrives as null counts as left out. */
import { bendArc, bendDial, bendGainOf, bendReleased, bendSetback, bendSpringback } from "../../functions/bend/bends";
import { kickAngleOf, kickLengthOf, kickParallel, kickRiseOf } from "../../functions/bend/kicks";
import { lengthInches, lengthText } from "../../functions/bend/lengths";
import {
  offsetAngleOf,
  offsetBox,
  offsetCompare,
  offsetMultiplierOf,
  offsetParallel,
  offsetRolling,
  offsetShrinkOf,
  offsetSpacingOf,
  offsetStagger,
} from "../../functions/bend/offsets";
import { saddleFour, saddleSpacingOf } from "../../functions/bend/saddles";
import { backMarkOf, stubDeductOf, stubMarkOf } from "../../functions/bend/stubs";
import { sweepErrorOf, sweepMarksOf, sweepParallel } from "../../functions/bend/sweeps";
import { shoeCalibrate } from "../../functions/bend/testBends";

/** The code and the message a cell gets. */
function cellError(call: () => unknown): string {
  try {
    return `no error: ${JSON.stringify(call())}`;
  } catch (error) {
    const { code, message } = error as { code: string; message: string };
    return `${code} ${message}`;
  }
}

const A_LENGTH = `a length: a number of inches, or text like 3' 4-1/2", 40.5 or 1028 mm`;
const IN_PRINT = "Leave radius out for sharp corners, or give the shoe's radius.";

test.each<[() => unknown, string]>([
  [() => lengthInches(""), `#VALUE! text must be ${A_LENGTH}; got an empty cell.`],
  [() => lengthInches("tall"), `#VALUE! text must be ${A_LENGTH}; got "tall".`],
  [() => lengthText(NaN), `#VALUE! inches must be ${A_LENGTH}; got NaN.`],
  [() => lengthText(5, 10), "#VALUE! denominator must be one of 2, 4, 8, 16, 32, 64; got 10."],
  [() => lengthText(5, 16, "yards"), `#VALUE! style must be one of feet, inches, mm; got "yards".`],
  [() => offsetMultiplierOf(0), "#VALUE! angle must be above 0° and at most 90°; got 0°."],
  [() => offsetMultiplierOf(30, 4), "#VALUE! table must be the word table, or left out; got 4."],
  [
    () => offsetMultiplierOf(20, "table"),
    `#N/A The printed tables give no offset multiplier for 20°; they have 5, 10, 15, 22.5, 30, 45, 60°. ${IN_PRINT}`,
  ],
  [() => offsetSpacingOf(null, 30), `#VALUE! rise must be ${A_LENGTH}; got an empty cell.`],
  [() => offsetSpacingOf(-6, 30), "#VALUE! rise must be above 0 in.; got -6 in."],
  [() => offsetSpacingOf(6, 180), "#VALUE! angle must be above 0° and at most 90°; got 180°."],
  [() => offsetSpacingOf(6, "steep"), `#VALUE! angle must be an angle in degrees; got "steep".`],
  [() => offsetSpacingOf(6, 30, "tables"), `#VALUE! radius must be ${A_LENGTH}; got "tables".`],
  [() => offsetSpacingOf(6, 30, 0), "#VALUE! radius must be above 0 in.; got 0 in."],
  [
    () => offsetSpacingOf(1, 30, 4),
    "#VALUE! rise must be at least 1.0718 in., or the two bends of 30° and radius 4 in. overlap; got 1 in.",
  ],
  [
    () => offsetShrinkOf(6, 5, "table"),
    `#N/A The printed tables give no offset shrink for 5°; they have 10, 15, 22.5, 30, 45, 60°. ${IN_PRINT}`,
  ],
  [() => offsetAngleOf(6, 5), "#VALUE! spacing must be at least 6 in. for a rise of 6 in.; got 5 in."],
  [() => offsetAngleOf(6, 5, 4), "#VALUE! spacing must be at least 5.2725 in. for a rise of 6 in.; got 5 in."],
  [
    () => offsetAngleOf(6, 13, "table"),
    "#N/A No printed multiplier is 2.1667 (spacing over rise); in print are 11.4 at 5°, 6 at 10°, 3.86 at 15°, " +
      `2.6 at 22.5°, 2 at 30°, 1.4 at 45°, 1.2 at 60°. ${IN_PRINT}`,
  ],
  [() => offsetStagger(4, 180), "#VALUE! angle must be above 0° and below 180°; got 180°."],
  [() => offsetRolling(0, 0), "#VALUE! rise and roll must not both be 0 in."],
  [() => offsetBox(7), "#VALUE! spacing must be at least 7 in. for a rise of 7 in.; got 6 in."],
  [() => offsetBox(0.5, 3, 2), "#VALUE! second mark must be above 3 in.; got 2 in."],
  [() => offsetParallel(6, 30, 4, 2.5), "#VALUE! count must be a whole number at least 1 and at most 100; got 2.5."],
  [() => offsetCompare(6, 30, "table"), `#VALUE! radius must be ${A_LENGTH}; got "table".`],
  [() => saddleSpacingOf(4, 200), "#VALUE! angle must be above 0° and below 180°; got 200°."],
  [() => saddleSpacingOf(4, 45, 4, "top"), `#VALUE! height to must be crest or corner; got "top".`],
  [
    () => saddleSpacingOf(0.5, 45, 4),
    "#VALUE! height must be at least 0.609 in., or the bends of 45° and 22.5° with radius 4 in. overlap; got 0.5 in.",
  ],
  [
    () => saddleSpacingOf(4, 30, "table"),
    `#N/A The printed tables give no saddle spacing for 30°; they have 45, 60°. ${IN_PRINT}`,
  ],
  [() => saddleFour(3, -1, 30), "#VALUE! width must be at least 0 in.; got -1 in."],
  [() => stubMarkOf(4, 5), "#VALUE! stub must be above the deduct of 5 in.; got 4 in."],
  [() => stubMarkOf(10, "five"), `#VALUE! deduct must be ${A_LENGTH}; got "five".`],
  [() => backMarkOf(5, 5), "#VALUE! distance must be above the deduct of 5 in.; got 5 in."],
  [() => stubDeductOf(4, 0), "#VALUE! outside diameter must be above 0 in.; got 0 in."],
  [() => kickRiseOf(2, 45, 4), "#VALUE! length must be at least 3.1416 in., the arc of 45° at radius 4 in.; got 2 in."],
  [
    () => kickLengthOf(1, 45, 4),
    "#VALUE! rise must be at least 1.1716 in., which the arc of 45° at radius 4 in. alone rises; got 1 in.",
  ],
  [() => kickAngleOf(24, 25), "#VALUE! rise must be at most 24 in. for a length of 24 in.; got 25 in."],
  [() => kickParallel(100, 6, 3), "#VALUE! angle must be above 0° and at most 90°; got 100°."],
  [() => bendArc(181, 4), "#VALUE! angle must be above 0° and at most 180°; got 181°."],
  [() => bendSetback(180, 4), "#VALUE! angle must be above 0° and below 180°; got 180°."],
  [() => bendGainOf(90, true), `#VALUE! radius must be ${A_LENGTH}; got TRUE.`],
  [() => bendDial(90, -1), "#VALUE! springback must be at least 0° and at most 45°; got -1°."],
  [() => bendDial(90, 5, -8), "#VALUE! start must lie on the dial, -5° to 105°; got -8°."],
  [() => bendDial(90, 5, 0, 10, 5), "#VALUE! dial to must be above dial from (10°); got 5°."],
  [
    () => bendDial(104, 5),
    "#VALUE! 104° with 5° of springback takes the dial from 0° to 109°, past its end at 105°; " +
      "start at -4° or lower, or bend at most 100° in one go.",
  ],
  [
    () => bendDial(120, 5),
    "#VALUE! 120° with 5° of springback takes the dial from 0° to 125°, past its end at 105°; " +
      "bend at most 100° in one go.",
  ],
  [
    () => bendDial(10, 5, 101),
    "#VALUE! 10° with 5° of springback takes the dial from 101° to 116°, past its end at 105°; " +
      "start at 90° or lower.",
  ],
  [
    () => bendDial(90, 20, 0, 0, 15),
    "#VALUE! 90° with 20° of springback takes the dial from 0° to 110°, past its end at 15°; " +
      "the dial is too short for this springback.",
  ],
  [() => bendReleased(4, 90, 50), "#VALUE! springback must be at least 0° and at most 45°; got 50°."],
  [() => bendSpringback(45, [["Angle", "Dial"]]), "#VALUE! tests must hold at least one test bend; got none."],
  [() => sweepMarksOf(90, 24, 1), "#VALUE! shots must be a whole number at least 2 and at most 180; got 1."],
  [() => sweepMarksOf(90, 24, 9, null, 30), "#VALUE! shoe radius must be at most the sweep's 24 in.; got 30 in."],
  [() => sweepErrorOf(90, 24, 9, null), `#VALUE! shoe radius must be ${A_LENGTH}; got an empty cell.`],
  [() => sweepParallel(24, 0, 3), "#VALUE! spacing must be above 0 in.; got 0 in."],
  [
    () => shoeCalibrate(30, 5, 10, 20, 0.706),
    "#VALUE! stub and leg must come to more than the cut length and 0.706 in. (30.706 in.); got 30 in. " +
      "Measure again, end to back.",
  ],
  [
    () => shoeCalibrate(30, 5, 10, 22.5, 0.706, 95, 45),
    "#VALUE! angle measured must be at least 80° and at most 100°; got 45°.",
  ],
])("%s", (call, message) => {
  expect(cellError(call)).toBe(message);
});

test("an optional argument that arrives as null or empty counts as left out", () => {
  expect(offsetSpacingOf(6, 30, null)).toBe(offsetSpacingOf(6, 30));
  expect(offsetSpacingOf(6, 30, "")).toBe(offsetSpacingOf(6, 30));
  expect(bendDial(90, 5, null, null, null)).toBe(95);
  expect(backMarkOf(20, null)).toBe(20);
  expect(lengthText(40.5, null, null)).toBe(`3' 4-1/2"`);
  expect(sweepMarksOf(90, 24, 9, null, null)).toEqual(sweepMarksOf(90, 24, 9));
});

test("lengths and angles may be text, words in any case", () => {
  expect(offsetSpacingOf(`6"`, "30°", " Table ")).toBe(12);
  expect(stubMarkOf(`1' 2"`, "5 in")).toBe(9);
  expect(saddleSpacingOf(4, 45, 4, " Corner ")).toBeCloseTo(11.14159, 5);
  expect(saddleSpacingOf(4, 45, 4, "crest")).toBe(saddleSpacingOf(4, 45, 4));
});
