/** Which ways out of Excel the pane has. */
export interface WaysOut {
  /** A print window opens from the pane. */
  prints: boolean;
  /** A file that the pane makes comes with the downloads. */
  saves: boolean;
  /** The way by the workbook stands first: it works whatever the pane may do. */
  workbookFirst: boolean;
}

/**
 * What this Excel lets a pane do, as far as is known. On a Mac neither printing nor saving does anything, and nothing
 * tells so (OfficeDev/office-js 3385, 4681; 2700 calls it by design). In a browser saving is reported to work (4681) and
 * nothing is said of printing. The page without Excel does both, which its tests show. Elsewhere, as on an iPad, neither
 * is counted on.
 */
export function waysOut(): WaysOut {
  const told = globalThis.Office?.context?.platform;
  if (told === undefined) return { prints: true, saves: true, workbookFirst: false };
  const platform = String(told);
  const known = platform === "PC" || platform === "OfficeOnline";
  return { prints: known, saves: known, workbookFirst: platform !== "PC" };
}
