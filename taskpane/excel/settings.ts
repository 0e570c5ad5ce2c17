import { batch, reading } from "./batch";

/** Values kept in the workbook itself (not on the machine); undefined for a key it does not have. */
export function readSettings(keys: readonly string[]): Promise<unknown[]> {
  return reading(async (context) => {
    const settings = context.workbook.settings;
    settings.load("items/key,items/value");
    await context.sync();
    return keys.map((key) => settings.items.find((item) => item.key === key)?.value as unknown);
  });
}

export function writeSettings(values: Readonly<Record<string, unknown>>): Promise<void> {
  return batch(async (context, commit) => {
    for (const [key, value] of Object.entries(values)) context.workbook.settings.add(key, value);
    await commit();
  });
}
