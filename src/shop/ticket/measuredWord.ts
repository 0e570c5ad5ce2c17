import type { Shoe } from "../shoe/shoe";

/** Ends the source of a shoe of which something is built in. */
const BUILT_IN = "built in";

/** Whether the radius and the deduct of a shoe were measured by whoever bends with it, as tickets say it. */
export const measuredWord = ({ row, source }: Pick<Shoe, "row" | "source">): "MEASURED" | "NOT MEASURED" =>
  row !== undefined && !source.endsWith(BUILT_IN) ? "MEASURED" : "NOT MEASURED";
