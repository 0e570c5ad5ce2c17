/** Leaves out a look that this host does not have, as the local page has fewer: the words are what counts. */
export function ifThere(look: () => void): void {
  try {
    look();
  } catch (error) {
    if ((error as { code?: string }).code !== "ApiNotFound") throw error;
  }
}

/** True where this Excel knows a set of its API; a host that cannot say is taken to know it. */
export const knows = (version: string): boolean =>
  globalThis.Office?.context?.requirements?.isSetSupported("ExcelApi", version) !== false;
