import type { Job } from "../job/job";
import type { RuleBook } from "../../rules/rules";
import { placesOf } from "../job/typicals";
import type { BuiltRun } from "../run/builtRun";
import { placeName } from "../run/runsTable";
import type { Finding } from "../code/finding";

/**
 * Rows that go by their place in the table because nobody gave them a name.
 * @param called what the message calls such a row, where its place is not known; left out: its place
 */
export const unnamedRows = ({ rows }: Job, called?: string): Finding[] =>
  rows
    .filter(({ name, rowNumber }) => name === placeName(rowNumber))
    .map(({ name }): Finding => ({
      run: name,
      weight: "look",
      rule: "a run has a name",
      finding: `${called ?? name} has nothing under Run; its pieces go by the row, which changes when rows are sorted or put in.`,
      fix: "Write a name under Run.",
    }));

/** Names that stand in more than one row. */
export function repeatedNames({ rows }: Job): Finding[] {
  const count = new Map<string, number>();
  for (const { name } of rows) count.set(name, (count.get(name) ?? 0) + 1);
  return [...count].flatMap(([run, times]): Finding[] =>
    times === 1
      ? []
      : [
          {
            run,
            weight: "look",
            rule: "a run's name stands once",
            finding: `${times} rows are named ${run}; their pieces cannot be told apart on the bench.`,
            fix: "Give each row a name of its own, or use Quantity for equal runs.",
          },
        ],
  );
}

/** A run of a typical that no rule places: it is looked at here, and counted nowhere. */
export function placedNowhere({ run }: BuiltRun, rules: RuleBook): Finding[] {
  const places = run.typical ? placesOf(run.typical, rules) : [];
  if (typeof places !== "string") return [];
  return [
    {
      run: run.name,
      weight: "look",
      rule: "a typical is placed so many times",
      finding: `${places}.`,
      fix: `Write Typical ${run.typical} under Rule in Rules and how many times under Value; with a comma and an area, for each area.`,
    },
  ];
}
