import { batch } from "./batch";

/** Makes an empty sheet. */
export function addSheet(name: string): Promise<void> {
  return batch(async (context) => {
    context.workbook.worksheets.add(name);
    await context.sync();
  });
}
