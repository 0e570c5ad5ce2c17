/** The rest of the demo job's tables. Prices, minutes and stock are invented for it; put your own in their place. */
import type { DemoCell } from "./types";

export const demoStock: readonly (readonly DemoCell[])[] = [
  ["Raceway", "Size", "Length", "On hand", "Price"],
  ["EMT", "1/2", "10'", null, 7.4],
  ["EMT", "1/2", `4' 2"`, 3, null],
  ["EMT", "3/4", "10'", null, 12.1],
  ["EMT", "1", "10'", null, 20.3],
  ["IMC", "1/2", "10'", null, 22.8],
  ["IMC", "3/4", "10'", null, 26.5],
  ["IMC", "3/4", `6' 8"`, 1, null],
  ["IMC", "1", "10'", null, 38.9],
  ["RMC", "1/2", "10'", null, 27.6],
  ["RMC", "3/4", "10'", null, 33.2],
  ["RMC", "1", "10'", null, 49.7],
  ["PVC-coated RMC", "3/4", "10'", null, 118],
];

export const demoPrices: readonly (readonly DemoCell[])[] = [
  ["Item", "Unit", "Price"],
  ["EMT 1/2 conduit", "ft", 0.74],
  ["EMT 3/4 conduit", "ft", 1.21],
  ["EMT 1 conduit", "ft", 2.03],
  ["IMC 1/2 conduit", "ft", 2.28],
  ["IMC 3/4 conduit", "ft", 2.65],
  ["IMC 1 conduit", "ft", 3.89],
  ["RMC 1/2 conduit", "ft", 2.76],
  ["RMC 3/4 conduit", "ft", 3.32],
  ["RMC 1 conduit", "ft", 4.97],
  ["PVC-coated RMC 3/4 conduit", "ft", 11.8],
  ["EMT 1/2 set-screw coupling", "each", 0.62],
  ["EMT 3/4 set-screw coupling", "each", 0.88],
  ["EMT 1 set-screw coupling", "each", 1.35],
  ["EMT 1/2 set-screw connector", "each", 0.58],
  ["EMT 3/4 set-screw connector", "each", 0.83],
  ["EMT 1 set-screw connector", "each", 1.29],
  ["EMT 1/2 strap", "each", 0.21],
  ["EMT 3/4 strap", "each", 0.26],
  ["EMT 1 strap", "each", 0.34],
  ["#14 THHN conductor", "ft", 0.11],
  ["#12 THHN conductor", "ft", 0.16],
  ["#10 THHN conductor", "ft", 0.25],
  ["#8 THHN conductor", "ft", 0.42],
  ["#6 THHN conductor", "ft", 0.63],
];

export const demoLabor: readonly (readonly DemoCell[])[] = [
  ["Operation", "Minutes"],
  ["bend", 3],
  ["stub-up", 2],
  ["back-to-back", 4],
  ["sweep", 1.5],
  ["three-bend saddle", 3.5],
  ["RMC bend", 4],
  ["conduit", 1.2],
];

export const demoBench: readonly (readonly DemoCell[])[] = [
  ["Setting", "Value"],
  ["Plane", "vertical"],
  ["Shoe height", 36],
  ["Support beyond", 60],
];

const example = (what: string, formula: string): DemoCell[] => [what, `=${formula}`, formula];

/** One-bend functions side by side: what it is, the result, the formula as text. */
export const oneBendRows: readonly (readonly DemoCell[])[] = [
  ["One bend, in inches and degrees", "Result", "Formula"],
  example("Offset 6 at 30°: mark spacing, printed constants", 'CONDUIT.OFFSET.SPACING(6,30,"table")'),
  example("the same, on a shoe of 4 in. radius", "CONDUIT.OFFSET.SPACING(6,30,4)"),
  example("the same: shrink on that shoe", "CONDUIT.OFFSET.SHRINK(6,30,4)"),
  example("Angle that makes an offset of 6 with marks 12 apart", "CONDUIT.OFFSET.ANGLE(6,12)"),
  example("Three-bend saddle 4 high, 45°: outer mark to center", "CONDUIT.SADDLE.SPACING(4,45,4)"),
  example("Stub-up 10, deduct 5: mark", "CONDUIT.STUB.MARK(10,5)"),
  example("Back-to-back 20: star mark from the back of the first", "CONDUIT.BACK.MARK(20)"),
  example("Back-to-back 20, deduct 5: arrow mark", "CONDUIT.BACK.MARK(20,5)"),
  example("Kick of 20° over 18: rise", "CONDUIT.KICK.RISE(18,20)"),
  example("Arc of a 90 on a radius of 4", "CONDUIT.BEND.ARC(90,4)"),
  example("Gain of that 90, outside to outside, OD 0.706", "CONDUIT.BEND.GAIN(90,4,0.706)"),
  example("Dial for a 90 with 5° springback, from zero", "CONDUIT.BEND.DIAL(90,5)"),
  example("the same, from 5° below zero", "CONDUIT.BEND.DIAL(90,5,-5)"),
  example("Conduit 3/4 EMT: outside diameter", 'CONDUIT.DATA("EMT","3/4","outside diameter")'),
  example("Nine #12 THHN in 1/2 EMT: part filled", 'CONDUIT.FILL("EMT","1/2","9 #12 THHN")'),
  example("Text to inches", `CONDUIT.LENGTH("3' 4-1/2""")`),
  example(
    "An offset on a card; in words where Excel has no cards",
    'CONDUIT.BEND.CARD("east 24, offset 6 up at 30, ahead 36","EMT","1/2")',
  ),
  example("A run on a card; its length where Excel has no cards", 'CONDUIT.RUN.CARD("up 36, east 60","EMT","1/2")'),
];
