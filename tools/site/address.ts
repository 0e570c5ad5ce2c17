/**
 * The base address the add-in will be served from, ending in a slash.
 * @throws Error when it is missing or not an https address
 */
export function readAddress(given: string | undefined): string {
  const wanted =
    "ADDIN_URL must be the https address the files will be served from, for example https://tools.example.com/raceway/";
  if (!given?.trim()) throw new Error(`${wanted}; it is not set.`);
  let address: URL;
  try {
    address = new URL(given.trim());
  } catch {
    throw new Error(`${wanted}; got ${given}.`);
  }
  if (address.protocol !== "https:" || address.search || address.hash || address.username) {
    throw new Error(`${wanted}; got ${given}.`);
  }
  return address.href.endsWith("/") ? address.href : `${address.href}/`;
}
