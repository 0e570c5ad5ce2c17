import type { Shoe } from "./shoe";

/** Whether a shoe was ever measured, in the words that stand on tickets and in checks. */
export const measuredWords = ({ measured }: Pick<Shoe, "measured">): string =>
  measured === undefined ? "NOT MEASURED" : `MEASURED ${measured}`;
