/** Text as a sentence: with a period, unless it ends in that of an abbreviation ("12 in."). */
export const sentence = (text: string): string => (text.endsWith(".") ? text : `${text}.`);
