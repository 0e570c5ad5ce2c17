/** In place of the package of this name: the language of a text, by which long words are hyphenated. This page is English. */
export const franc = (): string => "eng";
