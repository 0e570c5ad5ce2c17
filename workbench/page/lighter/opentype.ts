/** In place of the package of this name: fonts the reader of a document brings along. This page reads none. */
export function parse(): never {
  throw new Error("This page reads no font files.");
}
