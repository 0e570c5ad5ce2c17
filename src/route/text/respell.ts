import { lettersApart } from "../../units/names/lettersApart";
import { DIRECTIONS } from "./types";

const WAY = DIRECTIONS.join("|");
const STEP_WORDS = [
  ...DIRECTIONS,
  "ahead",
  "bend",
  "kick",
  "box",
  "coupling",
  "elbow",
  "expansion",
  "flex",
  "offset",
  "saddle",
  "stub",
  "sweep",
  "to",
  "union",
];
const INNER_WORDS = ["at", "over", "in", "shots", "back"];

/** Words that others use, and ours for them. */
const OTHER_WORDS: Readonly<Record<string, string>> = {
  n: "north",
  s: "south",
  e: "east",
  w: "west",
  u: "up",
  d: "down",
  straight: "ahead",
  forward: "ahead",
  forwards: "ahead",
  on: "ahead",
};

/** Whether a step in these words can be read. */
type Reads = (text: string) => boolean;

/** Most spellings offered at once. */
const MOST = 2;

/**
 * What somebody may have meant who wrote a step that cannot be read: the same words in our order, the word nearest to a
 * mistyped one, a comma between two steps, the direction that is missing.
 *
 * @param words the step in small letters, single blanks
 * @param reads whether a spelling can be read
 * @returns up to two spellings that read, the likelier first
 * @example respell("10' east", (text) => ...) //=> ["east 10'"]
 */
export function respell(words: string, isFirst: boolean, reads: Reads): string[] {
  const spelled = nearestWords(words);
  const offers = [words, spelled].flatMap((text) => [
    ...(text === words ? [] : [text]),
    ...inOrder(text),
    withCommas(text, reads),
    ...directionFirst(text),
    ...withDirection(text, isFirst, reads),
  ]);
  const readable = (text: string) => text.split(",").every((part) => reads(part.trim()));
  return [...new Set(offers)].filter((text) => text !== words && readable(text)).slice(0, MOST);
}

/** `offset up 6 at 30` has the rise after the direction, `bend north 30` the angle. */
const inOrder = (text: string): string[] => {
  const [, step, way, size, rest = ""] =
    new RegExp(`^(box offset|offset|saddle|kick|bend) (${WAY}) (\\S+(?: \\d+/\\d+"?)?)( .*)?$`).exec(text) ?? [];
  return step ? [`${step} ${size} ${way}${rest}`] : [];
};

/** `10' east` has the direction last; `45 up` may be an angle as well. */
function directionFirst(text: string): string[] {
  const [, size, way] = new RegExp(`^([\\d.].*?) (${WAY})$`).exec(text) ?? [];
  if (!size) return [];
  const isPlain = /^[\d.]+$/.test(size) && Number(size) < 180;
  return [`${way} ${size}`, ...(isPlain ? [`bend ${size} ${way}`] : [])];
}

/** `up 10 east 8'` lacks the comma between two steps: the text in as few steps as it can be read in, or as it is. */
function withCommas(text: string, reads: Reads): string {
  const steps = parted(text, reads);
  return steps ? steps.join(", ") : text;
}

function parted(text: string, reads: Reads): string[] | null {
  if (reads(text)) return [text];
  const cuts = [...text.matchAll(new RegExp(` (?=(?:${STEP_WORDS.join("|")})\\b)`, "g"))].map(({ index }) => index);
  for (const cut of cuts.reverse()) {
    const rest = reads(text.slice(0, cut)) ? parted(text.slice(cut + 1), reads) : null;
    if (rest) return [text.slice(0, cut), ...rest];
  }
  return null;
}

/** `10' east 8'` lacks the direction of its first leg: most runs begin with a stub up, and go on ahead. */
const withDirection = (text: string, isFirst: boolean, reads: Reads): string[] =>
  /^[\d.].* [a-z]/.test(text) ? [withCommas(`${isFirst ? "up" : "ahead"} ${text}`, reads)] : [];

/** The text with each word that is none of ours as the nearest one of ours. */
function nearestWords(text: string): string {
  const known = [...STEP_WORDS, ...INNER_WORDS];
  return text.replace(/[a-z]+/g, (word, at: number) => {
    if (known.includes(word) || /\d\s*$/.test(text.slice(0, at))) return word;
    const other = OTHER_WORDS[word];
    if (other !== undefined) return other;
    const far = word.length <= 4 ? 1 : 2;
    const near = STEP_WORDS.map((known) => ({ known, by: lettersApart(word, known) })).filter(({ by }) => by <= far);
    return near.sort((a, b) => a.by - b.by)[0]?.known ?? word;
  });
}
