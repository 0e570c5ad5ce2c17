import table from "./data/boxFill.json";

const BOXES: Record<string, Record<string, number>> = table.boxes;

const VOLUME = /(\d+(?:\.\d+)?)\s*(?:in³|in\^?3|cu\.?\s*in)/i;
const DEPTH = String.raw`\s*(?:box)?\s*[x×,]?\s*(\d(?:[-\s]\d\/\d)?)(?![\d/])`;
/** Standard boxes by how the trade writes them; the depth comes last. */
const SHAPES: readonly (readonly [words: RegExp, box: string])[] = [
  [new RegExp(String.raw`\b4[-\s]11\/16(?:\s*(?:sq|square))?\.?${DEPTH}`, "i"), "4-11/16 square"],
  [new RegExp(String.raw`\b4\s*(?:sq|square)\.?${DEPTH}`, "i"), "4 square"],
  [new RegExp(String.raw`\b4\s*(?:round|rd|oct|octagon|octagonal)\.?${DEPTH}`, "i"), "4 round"],
  [new RegExp(String.raw`\b4\s*[x×]\s*2[-\s]1\/8${DEPTH}`, "i"), "4 x 2-1/8"],
  [new RegExp(String.raw`\b3\s*[x×]\s*2(?=\s*[x×])${DEPTH}`, "i"), "3 x 2"],
];

/**
 * Volume of a box that its name tells [in³]: `JB-1 30.3 in3`, or a standard size, `JB-1 4 sq x 2-1/8`, `Switch 3 x 2 x 3-1/2`. Undefined
 * where it tells none.
 *
 * @example boxVolumeOf("JB-1 (4 square x 1-1/2)") //=> 21
 */
export function boxVolumeOf(name: string): number | undefined {
  const [, volume] = VOLUME.exec(name) ?? [];
  if (volume !== undefined) return Number(volume);
  for (const [words, box] of SHAPES) {
    const depth = words.exec(name)?.[1]?.trim().replace(/\s+/, "-");
    if (depth !== undefined) return BOXES[box]![depth];
  }
  return undefined;
}
