/** How long a page that is just being reloaded may still hold the workbook [ms]. */
const patience = 3000;

/**
 * Claims the stored workbook for this tab for as long as it is open. False when another tab has it: two tabs that save
 * over each other would lose work without a word.
 */
export function claimWorkbook(): Promise<boolean> {
  if (!("locks" in navigator)) return Promise.resolve(true);
  return new Promise((resolve) => {
    const giveUp = new AbortController();
    const timer = setTimeout(() => giveUp.abort(), patience);
    const hold = () => {
      clearTimeout(timer);
      resolve(true);
      return new Promise<void>(() => undefined);
    };
    navigator.locks.request("raceway-ledger workbook", { signal: giveUp.signal }, hold).catch(() => resolve(false));
  });
}
