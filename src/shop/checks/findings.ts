import { remember } from "../../memory/remember";
import type { Finding } from "../code/finding";

export const FINDING_HEADERS = ["Run", "Weight", "Rule", "Finding", "Fix"] as const;

/** Findings as a table with a header row; without findings one line says so. */
export function findingsTable(findings: readonly Finding[], runCount: number): string[][] {
  const rows = findings.map((finding) => findingCells(finding));
  const nothing = ["all runs", "ok", "", `${runCount} runs checked, nothing found`, ""];
  return [[...FINDING_HEADERS], ...(rows.length > 0 ? rows : [nothing])];
}

const findingCells = remember(({ run, weight, rule, finding, fix }: Finding) => [run, weight, rule, finding, fix]);

/** The findings of one run as one cell's text; "OK" without any. */
export function findingsText(findings: readonly Finding[]): string {
  if (findings.length === 0) return "OK";
  return findings.map(({ rule, finding, fix }) => `${finding} (${rule}) ${fix}`).join(" | ");
}
