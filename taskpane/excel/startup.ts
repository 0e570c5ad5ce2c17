/** Whether the add-in loads with this workbook; undefined where this Excel cannot say (SharedRuntime 1.1). */
export async function loadsWithWorkbook(): Promise<boolean | undefined> {
  const addin = globalThis.Office?.addin;
  if (!addin?.getStartupBehavior) return undefined;
  return (await addin.getStartupBehavior()) === "Load";
}

/** Has the add-in load with this workbook from now on, or no longer. */
export async function loadWithWorkbook(wanted: boolean): Promise<void> {
  await Office.addin.setStartupBehavior((wanted ? "Load" : "None") as Office.StartupBehavior);
}

/** Lets the keys of shortcuts.json open the pane, where Excel has such keys (SharedRuntime 1.1). */
export function openByShortcut(): void {
  globalThis.Office?.actions?.associate("OpenLedger", () => Office.addin.showAsTaskpane());
}
