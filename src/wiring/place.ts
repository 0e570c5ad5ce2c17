import { lookUpKey } from "../units/names/lookUpKey";
import { InputError, quoteValue } from "../units/errors";
import { COVER_PLACES, type CoverPlace } from "./cover";

const MAIN = ["exposed", "concealed", "buried", "in concrete"] as const;

/** Where a run is, as far as rules ask for it. */
export interface Place {
  readonly main: (typeof MAIN)[number];
  /** In a wet place, or in the ground, whose raceways are wet inside. */
  readonly wet: boolean;
  readonly hot: boolean;
  /** What is over a buried run. */
  readonly under?: CoverPlace;
}

const OTHER_WORDS: Readonly<Record<string, string>> = {
  underground: "buried",
  "in ground": "buried",
  "in the ground": "buried",
  concrete: "in concrete",
  "wet place": "wet",
  "hot place": "hot",
};
/** Rows of the code's table that are said in words; a run that is just buried is general. */
const OVER = COVER_PLACES.filter((place) => place !== "general");
const IN_WORDS = `${MAIN.join(", ")}, wet or hot, or what is over a buried run: ${OVER.join(", ")}`;

/**
 * Reads a Where cell: `exposed`, `buried`, `buried under a road`, `concealed, hot`. A run that names only wet or hot is exposed.
 *
 * @throws InputError for words that are none of these, or that exclude each other
 * @example readPlace("buried under a road").under //=> "under a road"
 */
export function readPlace(cell: unknown, argument = "Where"): Place {
  const words = String(cell)
    .split(/[,;+&]|\band\b/i)
    .map(lookUpKey)
    .filter((word) => word !== "");
  let [wet, hot] = [false, false];
  const mains = new Set<Place["main"]>();
  const overs = new Set<CoverPlace>();
  for (const said of words) {
    const word = OTHER_WORDS[said] ?? said;
    const main = MAIN.find((each) => each === word);
    const over = OVER.find((each) => each === word.replace(/^buried /, ""));
    if (word === "wet") wet = true;
    else if (word === "hot") hot = true;
    else if (main || over) mains.add(main ?? "buried");
    else throw new InputError(`${argument} must be ${IN_WORDS}; got ${quoteValue(cell)}.`);
    if (over) overs.add(over);
  }
  if (mains.size > 1 || overs.size > 1) {
    throw new InputError(
      `${argument} must name one place; got ${quoteValue(cell)}. Part the run where its place changes.`,
    );
  }
  const main = [...mains][0] ?? "exposed";
  const [over] = overs;
  return {
    main,
    wet: wet || main === "buried",
    hot,
    ...(main === "buried" && { under: over ?? "general" }),
  };
}

/** True when a run is held by straps and free to move: not in the ground and not in concrete. Where nothing is said, it is. */
export const standsFree = (place: Place | undefined): boolean =>
  place === undefined || (place.main !== "buried" && place.main !== "in concrete");

/** A place as its cell would say it. @example placeInWords(readPlace("hot, buried under a road")) //=> "under a road, hot" */
export const placeInWords = ({ main, wet, hot, under }: Place): string =>
  [under === undefined || under === "general" ? main : under, wet && main !== "buried" && "wet", hot && "hot"]
    .filter(Boolean)
    .join(", ");
