/**
 * Boxes: NEC 2023, table 314.16(A), all 24 boxes and 168 counts as a public data file gives them (named in the data beside). What is
 * checked is that counting by volume, as BOX.FILL does, comes to the printed count, and that a name tells its box.
 */
import { boxVolumeOf } from "../../src/wiring/boxes/boxNames";
import { boxFill } from "../../functions/wire/wiring";
import table from "./data/necBoxes.json";

const SIZES = ["18", "16", "14", "12", "10", "8", "6"];
const ROWS = table.rows as [name: string, volume: number, counts: number[], gangs?: number][];

test("there are 24 boxes and 168 counts", () => {
  expect(ROWS).toHaveLength(24);
  expect(ROWS.flatMap(([, , counts]) => counts)).toHaveLength(168);
});

test.each(ROWS)("%s: %f in³ take the printed conductors and not one more", (_name, volume, counts) => {
  const most = SIZES.map((size) => {
    let count = 1;
    while (Number(boxFill(`${count + 1} #${size}`)) <= volume) count++;
    return count;
  });
  expect(most).toEqual(counts);
});

test.each(ROWS)("the name %s tells its volume", (name, volume, _counts, gangs = 1) => {
  expect(boxVolumeOf(`JB-7 (${name})`)).toBe(gangs * volume);
});

test.each([
  [`JB-2 4" sq x 2-1/8" deep`, 30.3],
  ["4 x 4 x 1-1/2", 21],
  ["4 in. octagonal box x 2 1/8", 21.5],
  [`4-11/16" x 4-11/16" x 2-1/8"`, 42],
  ["4 11/16 sq x 1-1/2", 29.5],
  ["3x2x2", 10],
  ["FD box 20.0 in3", 20],
  ["FS-2 flow switch", undefined],
  ["Panel LP-1", undefined],
  ["Box 4 x 4", undefined],
  ["JB 12 x 12 x 4", undefined],
  ["4 x 4 x 6 trough", undefined],
])("%s tells %p in³", (name, volume) => expect(boxVolumeOf(name)).toBe(volume));
