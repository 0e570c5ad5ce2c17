import { readSettings } from "../settings";

/**
 * A set-up that is under way: kept in the workbook from its first step to its last, so that one that broke half way is
 * known to whoever opens the workbook.
 */
export interface Begun {
  /** The sheets it makes. */
  sheets: string[];
  /** Settings that it stores once everything stands. */
  settings: Record<string, unknown>;
}

const KEY = "raceway-ledger.begun";

/** What was begun and not ended; no sheets where everything that was begun stands whole. */
export async function readBegun(): Promise<Begun> {
  const [stored] = await readSettings([KEY]);
  return { sheets: [], settings: {}, ...(typeof stored === "object" ? (stored as Partial<Begun>) : {}) };
}

export const begunSetting = (begun: Begun): [key: string, value: Begun] => [KEY, begun];

export const NOTHING_BEGUN = begunSetting({ sheets: [], settings: {} });
