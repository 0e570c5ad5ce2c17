import table from "../data/boxFill.json";

const BOXES: Record<string, Record<string, number>> = table.boxes;
const CASTS: Record<string, { one: number; each: number }> = table.castBoxes;

const VOLUME = /(\d+(?:\.\d+)?)\s*(?:in³|in\^?3|cu\.?\s*in)/i;
const DEPTH = String.raw`\s*(?:box)?\s*[x×,]?\s*(\d(?:[-\s]\d\/\d)?)(?![\d/])`;
/** Standard boxes by how the trade writes them; the depth comes last. */
const SHAPES: readonly (readonly [words: RegExp, box: string])[] = [
  [
    new RegExp(String.raw`\b4[-\s]11\/16(?:\s*[x×]\s*4[-\s]11\/16|\s*(?:sq|square))?\.?${DEPTH}`, "i"),
    "4-11/16 square",
  ],
  [new RegExp(String.raw`\b4\s*(?:sq|square|[x×]\s*4(?=\s*[x×]))\.?${DEPTH}`, "i"), "4 square"],
  [new RegExp(String.raw`\b4\s*(?:round|rd|oct|octagon|octagonal)\.?${DEPTH}`, "i"), "4 round"],
  [new RegExp(String.raw`\b4\s*[x×]\s*2[-\s]1\/8${DEPTH}`, "i"), "4 x 2-1/8"],
  [new RegExp(String.raw`\b3[-\s]3\/4\s*[x×]\s*2(?=\s*[x×])${DEPTH}`, "i"), "3-3/4 x 2"],
  [new RegExp(String.raw`(?<![-/\d]\s?)\b3\s*[x×]\s*2(?=\s*[x×])${DEPTH}`, "i"), "3 x 2"],
];
const INCH_MARKS = /["″”]|(?<=\d)\s*in\.?(?=\s|$|\))/g;
/** A cast box with a cover, FS or FD, of one gang or several. */
const CAST = /\b(?:(\d)[-\s]gang\s+)?(FS|FD)\s+box\b/i;

/**
 * Volume of a box that its name tells [in³]: `JB-1 30.3 in3`, a standard size, `JB-1 4 sq x 2-1/8`, `Switch 3 x 2 x 3-1/2`, or a cast
 * one, `2-gang FD box`. Undefined where it tells none.
 *
 * @example boxVolumeOf("JB-1 (4 square x 1-1/2)") //=> 21
 */
export function boxVolumeOf(name: string): number | undefined {
  const [, volume] = VOLUME.exec(name) ?? [];
  if (volume !== undefined) return Number(volume);
  const plain = name.replace(INCH_MARKS, " ");
  for (const [words, box] of SHAPES) {
    const depth = words.exec(plain)?.[1]?.trim().replace(/\s+/, "-");
    if (depth !== undefined) return BOXES[box]![depth];
  }
  const [, gangs = "1", cast] = CAST.exec(plain) ?? [];
  if (cast === undefined) return undefined;
  const { one, each } = CASTS[cast.toUpperCase()]!;
  return gangs === "1" ? one : Number(gangs) * each;
}
