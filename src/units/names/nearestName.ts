import { lettersApart } from "./lettersApart";
import { lookUpKey } from "./lookUpKey";

/** A word so short is another word where one letter differs: RMC is no misspelled IMC. */
const SHORT = 3;
/** One letter in so many may be wrong, and three at most. */
const LETTERS_PER_SLIP = 5;
const MOST_SLIPS = 3;

/**
 * The name that was most likely meant: the same words in another order, or one with a slip of the pen. Numbers, sizes and
 * short words must be the same: a 3/4 strap is no misspelled 1/2 strap.
 *
 * @example nearestName("1/2 EMT srtap", ["EMT 1/2 strap", "EMT 3/4 strap"]) //=> "EMT 1/2 strap"
 */
export function nearestName(name: string, names: readonly string[]): string | undefined {
  const own = spelled(name);
  let nearest: { name: string; apart: number } | undefined;
  for (const other of names) {
    const { letters, sorted, numbers, words, short } = spelled(other);
    if (numbers !== own.numbers || (words === own.words && short !== own.short)) continue;
    const most = Math.min(MOST_SLIPS, Math.floor(letters.length / LETTERS_PER_SLIP));
    if (Math.abs(letters.length - own.letters.length) > most) continue;
    const apart = Math.min(lettersApart(own.letters, letters), lettersApart(own.sorted, sorted));
    if (apart <= most && apart < (nearest?.apart ?? Infinity)) nearest = { name: other, apart };
  }
  return nearest?.name;
}

/** The words of a name as they stand and in the order of the alphabet, those with a digit apart, and the short ones. */
function spelled(name: string): { letters: string; sorted: string; numbers: string; words: number; short: string } {
  const words = lookUpKey(name).split(" ");
  const isNumber = (word: string): boolean => /\d/.test(word);
  const letters = words.filter((word) => !isNumber(word));
  return {
    letters: letters.join(" "),
    sorted: [...letters].sort().join(" "),
    numbers: words.filter(isNumber).sort().join(" "),
    words: letters.length,
    short: letters
      .filter((word) => word.length <= SHORT)
      .sort()
      .join(" "),
  };
}
