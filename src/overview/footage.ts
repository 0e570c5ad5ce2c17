import { groupsOf } from "../bid/groups";
import type { PricedJob } from "../bid/pricedJob";
import { Shares } from "../bid/shares";
import type { PricedLine } from "../takeoff/lines/priceLine";
import { NONE, unnamed, type Bar, type OverviewPart } from "./part";

const WHY_NONE = "no conduit: no run of the job could be counted";

const isConduit = ({ line }: PricedLine): boolean => line.item.kind === "conduit";

/** Feet of conduit in place, by raceway and size, in the order of the take-off. */
export function feetBySize(lines: readonly PricedLine[]): OverviewPart {
  const bars = lines.filter(isConduit).map(({ line: { item, quantity } }): Bar => ({
    label: `${item.raceway ?? ""} ${item.size ?? ""}`.trim(),
    amount: quantity,
  }));
  return {
    name: "Conduit by size",
    unit: "ft",
    bars,
    note: bars.length > 0 ? "in place, as Takeoff has it" : WHY_NONE,
  };
}

/** The same by the areas of the runs. */
export function feetByArea(job: PricedJob): OverviewPart {
  const groups = groupsOf(job, ["Area"]);
  const shares = new Shares(job.works, ["Area"], groups);
  const feet = shares.none();
  for (const { line } of job.lines.filter(isConduit)) {
    for (const source of line.sources) {
      for (const [place, quantity] of shares.quantities(line, source)) feet[place]! += quantity;
    }
  }
  const bars = groups.flatMap(([area = ""], place): Bar[] =>
    feet[place]! > NONE ? [{ label: unnamed(area, "area"), amount: feet[place]! }] : [],
  );
  return { name: "Conduit by area", unit: "ft", bars, note: bars.length > 0 ? "" : WHY_NONE };
}
