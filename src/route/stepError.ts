import { InputError, quoteValue } from "../units/errors";

/** What is wrong with a step, in the one form all route messages share: number, what was read, what was expected. */
export const stepError = (step: number, got: string, expected: string): InputError =>
  new InputError(`step ${step}: got ${quoteValue(got)}; expected ${expected.replace(/\.$/, "")}.`);
