import type { CutPattern } from "../../cutting";

/** What is left of the sticks of one line. */
export interface Drop {
  /** What to write on each; empty for scrap. */
  readonly names: string;
  readonly goesTo: "Stock" | "scrap";
}

/** Numbers the drops of a job that are worth keeping, through all its plans. */
export class DropNames {
  /** @param last number of the last drop so far */
  constructor(public last = 0) {}

  /** @param keep shortest drop that is kept [steps] */
  of({ remnant, count }: Pick<CutPattern, "remnant" | "count">, keep: number): Drop | undefined {
    if (remnant <= 0) return undefined;
    if (remnant < keep) return { names: "", goesTo: "scrap" };
    const first = this.last + 1;
    this.last += count;
    return { names: `drop ${first}${count > 1 ? ` to ${this.last}` : ""}`, goesTo: "Stock" };
  }
}
