/** True for what an optional argument is when it was left out: Excel passes null, a blank cell may come as "". */
export const isOmitted = (value: unknown): boolean => value === null || value === undefined || value === "";

/** Reads an optional argument; undefined when it was left out. */
export const optional = <T>(value: unknown, read: (value: unknown) => T): T | undefined =>
  isOmitted(value) ? undefined : read(value);
