/**
 * Widths of letters in Arial [1/1000 of their height]: Helvetica's metrics as Adobe published them (Core14 AFM), which
 * Arial and Liberation Sans keep to.
 */
const WIDTHS: readonly (readonly [width: number, letters: string])[] = [
  [191, "'"],
  [222, "ijl’"],
  [260, "|"],
  [278, " !,./:;I[\\]ft"],
  [333, "()-`r“”"],
  [334, "{}"],
  [355, '"'],
  [389, "*"],
  [400, "°"],
  [469, "^"],
  [500, "Jcksvxyz"],
  [556, "#$0123456789?L_abdeghnopqu–"],
  [584, "+<=>~×±"],
  [611, "FTZ"],
  [667, "&ABEKPSVXY"],
  [722, "CDHNRUw"],
  [778, "GOQ"],
  [833, "Mm½¼¾"],
  [889, "%"],
  [944, "W"],
  [1000, "—→"],
  [1015, "@"],
];
/** A letter that is not in the list, of another script perhaps. */
const OTHER = 1000;

const widthOf = new Map(WIDTHS.flatMap(([width, letters]) => [...letters].map((letter) => [letter, width])));

/** Width of a text in letters of some height, in the unit of that height. */
export const arialWidth = (text: string, height: number): number =>
  [...text].reduce((sum, letter) => sum + (widthOf.get(letter) ?? OTHER), 0) * (height / 1000);

/** Lines that words take within a width; a word is broken only where it is longer than a line. */
export function arialLines(text: string, height: number, width: number): number {
  const space = arialWidth(" ", height);
  return text.split("\n").reduce((sum, line) => {
    let [lines, used] = [1, 0];
    for (const word of line.split(" ")) {
      const needed = arialWidth(word, height);
      if (used > 0 && used + space + needed <= width) used += space + needed;
      else {
        lines += (used > 0 ? 1 : 0) + Math.max(0, Math.ceil(needed / width) - 1);
        used = needed % width || needed;
      }
    }
    return sum + lines;
  }, 0);
}
