/** What a cell shows whose function Excel does not know, or waits for: it stays so until it is entered again. */
const LOST = /^#(NAME\?|BUSY!|GETTING_DATA|CONNECT!)$/;

/** As files name an add-in's functions, points as underscores; Excel shows it where the add-in had not loaded. */
const IN_FILES = /_xldudf_(CONDUIT_\w+)(?=\()/gi;

/** Before a function that gives a table: Excel shows its first cell only. */
const FIRST_ONLY = /@(?=CONDUIT\.JOB\.)/gi;

/** True for a formula with one of our functions, however the host spells it. */
export const isOurs = (formula: string): boolean => /^=.*(\bCONDUIT\.|_xldudf_CONDUIT_)/i.test(formula);

/** A formula as it is entered: our functions by their own names, with their whole result. */
export const asEntered = (formula: string): string =>
  formula.replace(IN_FILES, (_, name: string) => name.replaceAll("_", ".").toUpperCase()).replace(FIRST_ONLY, "");

export const isLost = (value: unknown): boolean => LOST.test(String(value));

/** True for a cell with one of our formulas that has to be entered again to work. */
export const hasToBeEntered = (formula: string, value: unknown): boolean =>
  isOurs(formula) && (isLost(value) || asEntered(formula) !== formula);
