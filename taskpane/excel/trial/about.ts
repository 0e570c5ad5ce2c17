import { reading } from "../batch";
import { ifThere } from "../ifThere";

/** Sets of Microsoft's API for Excel, and the newest of each that is asked about (1.1 up to 1.n). */
const SETS: Readonly<Record<string, number>> = {
  ...{ ExcelApi: 20, CustomFunctionsRuntime: 5, SharedRuntime: 2, KeyboardShortcuts: 1, DialogApi: 2 },
  ...{ RibbonApi: 2, OpenBrowserWindowApi: 1, ExcelApiOnline: 1 },
};

/** What this Excel says of itself, word by word. Nothing of the workbook is in it. */
export function aboutExcel(): [what: string, found: string][] {
  const context = globalThis.Office?.context as Partial<Office.Context> | undefined;
  const { host, platform, version } = (context?.diagnostics ?? {}) as Partial<Office.ContextInformation>;
  const unknown = "not told";
  return [
    ["program", String(host ?? unknown)],
    ["platform", String(platform ?? unknown)],
    ["version", String(version ?? unknown)],
    ["language", `${context?.displayLanguage ?? unknown}; of the workbook ${context?.contentLanguage ?? unknown}`],
    ["browser", globalThis.navigator?.userAgent ?? unknown],
    ...Object.entries(SETS).map(([set, last]): [string, string] => [set, newest(set, last)]),
  ];
}

function newest(set: string, last: number): string {
  const requirements = globalThis.Office?.context?.requirements;
  if (!requirements) return "not told";
  for (let minor = last; minor > 0; minor--) if (requirements.isSetSupported(set, `1.${minor}`)) return `1.${minor}`;
  return "none";
}

/** How the workbook calculates: `Automatic`, `Manual` …; empty where this Excel does not say. */
export function calculationMode(): Promise<string> {
  return reading(async (context) => {
    const asked: Excel.Application[] = [];
    ifThere(() => asked.push(context.workbook.application.load("calculationMode")));
    await context.sync();
    return String(asked[0]?.calculationMode ?? "");
  });
}

/** How long Excel takes to answer a request that asks for next to nothing [ms]. */
export async function roundTrip(): Promise<number> {
  const times: number[] = [];
  for (let count = 0; count < 5; count++) {
    const begun = performance.now();
    await reading(async (context) => {
      context.workbook.worksheets.load("items/name");
      await context.sync();
    });
    times.push(performance.now() - begun);
  }
  return times.sort((a, b) => a - b)[2]!;
}
