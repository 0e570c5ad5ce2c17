import { RESULTS, TABLES, type ItemName } from "../workbook/items";
import { readSettings, writeSettings } from "./settings";

/** What this workbook calls our tables and result sheets. */
export type Names = Record<ItemName, string>;

const KEY = "raceway-ledger.names";

export const defaultNames = (): Names =>
  Object.fromEntries([...TABLES, ...RESULTS].map((name) => [name, name])) as Names;

/** The names in use: the workbook's own, or ours where it says nothing. */
export async function readNames(): Promise<Names> {
  const [stored] = await readSettings([KEY]);
  return { ...defaultNames(), ...(typeof stored === "object" ? (stored as Partial<Names>) : {}) };
}

/** The names among settings that wait to be stored. */
export const namesIn = (settings: Readonly<Record<string, unknown>>): Partial<Names> =>
  (settings[KEY] as Partial<Names> | undefined) ?? {};

/** The names as a setting of the workbook. */
export const namesSetting = (names: Names): Record<string, unknown> => ({ [KEY]: names });

export const writeNames = (names: Names): Promise<void> => writeSettings(namesSetting(names));
