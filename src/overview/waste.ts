import { stepsToInches, type CutGrid } from "../cutting";
import type { Job } from "../shop/job/job";
import { plannedJob } from "../takeoff/reports/jobCuts";
import { show } from "../units/show";
import type { Bar, OverviewPart } from "./part";

/** What the cutting plan leaves and does not keep, kerfs included, by raceway and size. */
export function wasteBySize(job: Job, stock: unknown): OverviewPart {
  const { planned, unplanned } = plannedJob(job, { stock });
  const bars = planned.map(({ title, plan, grid }): Bar => {
    const [waste, length] = [inFeet(plan.waste, grid), inFeet(plan.stockLength, grid)];
    return {
      label: title,
      amount: waste,
      note: `${show((100 * waste) / length, 1)} % of ${show(length, 1)} ft to cut`,
    };
  });
  const lacks = unplanned.length > 0 ? `without ${unplanned.join(", ")}, not planned` : "";
  const note = bars.length > 0 ? lacks : lacks || "nothing is cut: no run of the job takes sticks";
  return { name: "Waste by size", unit: "ft", bars: withNote(bars, lacks), note };
}

const inFeet = (steps: number, grid: CutGrid): number => stepsToInches(steps, grid) / 12;

/** What is said of all of them goes with the first, behind its own. */
const withNote = (bars: readonly Bar[], words: string): Bar[] =>
  bars.map((bar, at) => (at === 0 && words !== "" ? { ...bar, note: `${bar.note ?? ""}; ${words}` } : bar));
