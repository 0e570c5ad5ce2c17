/** In place of the package of this name: what of a text is Chinese, Japanese or Korean, by what the language itself knows. */
const scripts = ["Han", "Hiragana", "Katakana", "Hangul", "Bopomofo"].map((name) => `\\p{Script=${name}}`).join("");

/** CJK symbols and punctuation, and the forms as wide as a letter. */
const marks = "\\u3000-\\u303F\\uFE30-\\uFE4F\\uFF00-\\uFFEF";

const set = (characters: string) => ({ toRegExp: () => new RegExp(`[${characters}]`, "u") });

export const letters = () => set(scripts);
export const punctuations = () => set(marks);
export const all = () => set(scripts + marks);
