/** Vulgar fractions such as ½ ⅜ ¾: Latin-1's three and the number forms block. */
const FRACTION_SIGN = /[\u00bc-\u00be\u2150-\u215e]/g;

/**
 * Text with the many typographic marks of numbers and lengths brought to the plain ones of the keyboard: `- / ' "`,
 * lower case, no spaces at the ends.
 *
 * @example plainMarks(" −3′ 4½″ ") //=> -3' 4 1/2"
 */
export function plainMarks(text: string): string {
  return text
    .replace(FRACTION_SIGN, (sign) => ` ${sign.normalize("NFKC")}`)
    .replace(/[\u2010-\u2015\u2212]/g, "-")
    .replace(/[\u2044\u2215]/g, "/")
    .replace(/[\u2018\u2019\u2032\u02b9\u00b4`]/g, "'")
    .replace(/[\u201c\u201d\u2033\u02ba]|''/g, '"')
    .trim()
    .toLowerCase();
}
