import { buildJob } from "../../src/shop/job/job";
import { checkJob } from "../../src/shop/checks/checks";
import type { Finding } from "../../src/shop/code/finding";

/** What Checks says of one run, but for shoes that were never measured. */
export function findingsOf(
  run: Readonly<Record<string, unknown>>,
  rules: readonly (readonly unknown[])[] = [],
  edition: 2020 | 2023 = 2023,
): Finding[] {
  const named = { Run: "A-1", Raceway: "EMT", Size: "1/2", Route: "up 40, east 60", ...run };
  const runs = [Object.keys(named), Object.values(named)];
  const job = buildJob({ runs, rules: rules.length > 0 ? [["Rule", "Value"], ...rules] : null });
  return checkJob(job, edition).filter(({ rule }) => !rule.startsWith("a shoe is measured"));
}

/** The findings whose rule names a section. */
export const aboutSection = (findings: readonly Finding[], section: string): Finding[] =>
  findings.filter(({ rule }) => rule.includes(section));
