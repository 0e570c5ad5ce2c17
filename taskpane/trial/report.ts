import type { PartReport } from "./runTrial";
import type { Verdict } from "./types";

const SIGN: Readonly<Record<Verdict, string>> = { same: "ok", differs: "DIFFERS", absent: "not here", told: "-" };

/** What a person saw of what the pane cannot see itself. */
export type Seen = Readonly<Record<"print" | "save", boolean | undefined>>;

/** The report as text, to be copied and sent. */
export function reportText(reports: readonly PartReport[], seen: Seen, version: string): string {
  const parts = reports.map(({ id, title, lines, problem }) => [
    `## ${title} (${id})`,
    ...lines.map(({ what, found, verdict }) => `${SIGN[verdict]}  ${what}${found === "yes" ? "" : `: ${found}`}`),
    ...(problem ? [`BROKE OFF: ${problem}`] : []),
  ]);
  const told = (saw: boolean | undefined) => (saw === undefined ? "not tried" : saw ? "works" : "nothing came");
  const byHand = [
    "## Paper and files (paper)",
    `-  printing from the pane: ${told(seen.print)}`,
    `-  saving from the pane: ${told(seen.save)}`,
  ];
  return [[`# Trial of an Excel with Raceway Ledger ${version}`], ...parts, byHand]
    .map((lines) => lines.join("\n"))
    .join("\n\n");
}

/** How many things are not as they should be: differences, and parts that broke off. */
export const differences = (reports: readonly PartReport[]): number =>
  reports.reduce(
    (sum, { lines, problem }) => sum + lines.filter(({ verdict }) => verdict === "differs").length + (problem ? 1 : 0),
    0,
  );

/** How many looks this Excel does not have. */
export const absences = (reports: readonly PartReport[]): number =>
  reports.flatMap(({ lines }) => lines).filter(({ verdict }) => verdict === "absent").length;
