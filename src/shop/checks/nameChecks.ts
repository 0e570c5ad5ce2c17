import type { Job } from "../job/job";
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
