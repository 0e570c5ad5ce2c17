import { batch } from "../batch";

/** Makes an empty sheet. */
export function addSheet(name: string): Promise<void> {
  return batch(async (context, commit) => {
    context.workbook.worksheets.add(name);
    await commit();
  });
}
