import texts from "./data/sources.json";

/** A value of a data file with the key of its source. */
export interface Sourced {
  readonly value: number;
  readonly source: string;
}

/** Where a value comes from, in words. Those that were not read in print say "from memory" or "common practice". */
export function sourceInWords(key: string): string {
  const text = (texts as Record<string, string>)[key];
  if (text === undefined) throw new Error(`no source "${key}"`);
  return text;
}

/** True for a value that was read in no print. */
export const isFromMemory = (key: string): boolean => /from memory/.test(sourceInWords(key));
