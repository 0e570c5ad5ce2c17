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

/**
 * What a row of a table says of its run: the finding that weighs most and how many more there are, so that the row stays
 * low; Checks has them whole. "OK" without any.
 */
export function rowText(findings: readonly Finding[]): string {
  const first = findings.find(({ weight }) => weight === "stop") ?? findings[0];
  if (!first) return "OK";
  const more = findings.length - 1;
  return more === 0 ? first.finding : `${first.finding} (${more} more in Checks)`;
}

/** The findings of one run as one text; "OK" without any. */
export function findingsText(findings: readonly Finding[]): string {
  if (findings.length === 0) return "OK";
  return findings.map(({ rule, finding, fix }) => `${finding} (${rule}) ${fix}`).join(" | ");
}
