/** The text of a drawing's file: UTF-8, or Windows-1252 as older drawings have it. */
export function textOfBytes(bytes: Uint8Array): string {
  try {
    return new TextDecoder("utf-8", { fatal: true }).decode(bytes);
  } catch {
    return new TextDecoder("windows-1252").decode(bytes);
  }
}
