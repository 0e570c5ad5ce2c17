import { SpreadsheetSkeleton } from "@univerjs/preset-sheets-core";

/** The grid measures rows a while after a change; a sheet that was deleted meanwhile has none left, and it would throw. */
export function leaveGoneSheetsAlone(): void {
  const { prototype } = SpreadsheetSkeleton;
  const measure = prototype.calculateAutoHeightInRange;
  prototype.calculateAutoHeightInRange = function (this: SpreadsheetSkeleton, ...given) {
    const isGone = !(this as unknown as { _worksheetData: unknown })._worksheetData;
    return isGone ? [] : measure.apply(this, given);
  };
}
