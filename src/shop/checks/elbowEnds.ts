import { showInches } from "../../units/show";
import type { Finding } from "../code/finding";
import { builtRows, type Job } from "../job/job";

/** Sizes whose factory elbows have straight ends that are in no print we read and that the shop has not written: said once. */
export function assumedElbowEnds(job: Job): Finding[] {
  const ends = new Map(
    builtRows(job).flatMap(({ run, built: { fittings, pulls } }) => {
      const isAssumed = fittings.endFromMemory && pulls.some(({ elbows }) => elbows.length > 0);
      return isAssumed ? [[`${run.raceway} ${run.size}`, fittings.end] as const] : [];
    }),
  );
  if (ends.size === 0) return [];
  const said = [...ends].map(([size, end]) => `${size}: ${showInches(end)}`).join(", ");
  const written = [...ends].map(([size, end]) => `${size}: ${end}`).join("; ");
  return [
    {
      run: "Rules",
      weight: "look",
      rule: "straight ends of factory elbows are measured before pieces are cut to them (common practice)",
      finding: `straight ends of factory elbows are from memory of ANSI C80.1, not from a print (${said}); pieces beside them are cut to that.`,
      fix: `Check your supplier's, and write them into Rules, Factory elbow straight ends, as in ${written}.`,
    },
  ];
}
