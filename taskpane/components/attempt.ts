import { isUserError } from "../../src/units/errors";

/** The result of reading something a person wrote, or the words for what is wrong with it. */
export type Attempt<T> = { value: T; problem?: undefined } | { value?: undefined; problem: string };

/** Runs a reader of src/; its errors for the user come back as words, faults of ours are thrown on. */
export function attempt<T>(read: () => T): Attempt<T> {
  try {
    return { value: read() };
  } catch (error) {
    if (!isUserError(error)) throw error;
    return { problem: error.message };
  }
}
