import { workName } from "../takeoff/lists/labor";
import { addedTo } from "./labor/factors";
import type { PricedJob } from "./pricedJob";
import type { Shares } from "./shares";

/** Labor of one kind of work, by group. */
export interface WorkHours {
  /** As the Labor table may name it: with raceway and size where it has them. */
  readonly work: string;
  readonly unit: "ft" | "each";
  readonly quantity: number[];
  /** [h], as the Labor table has them */
  readonly hours: number[];
  /** [h], what the Factors table adds to them */
  readonly added: number[];
}

/**
 * Hours of every work that has minutes, by group, in the order of the take-off. What several rows share has the mean of what
 * their conditions add.
 */
export function jobHours({ job, lines, labor, factors }: PricedJob, shares: Shares): WorkHours[] {
  const works = new Map<string, WorkHours>();
  for (const { line } of lines) {
    const { item } = line;
    // No work goes with an allowance.
    if (line.operations.size === 0) continue;
    for (const source of line.sources) {
      const minutes = labor.minutesFor(item, source.operation);
      if (minutes === undefined) continue;
      const name = workName(item, source.operation);
      const work = works.get(name) ?? {
        ...{ work: name, unit: item.unit },
        ...{ quantity: shares.none(), hours: shares.none(), added: shares.none() },
      };
      works.set(name, work);
      const part = addedTo(source.rows, factors, job.rules);
      for (const [place, quantity] of shares.quantities(line, source)) {
        const hours = (quantity * minutes) / 60;
        work.quantity[place]! += quantity;
        work.hours[place]! += hours;
        work.added[place]! += hours * part;
      }
    }
  }
  return [...works.values()];
}
