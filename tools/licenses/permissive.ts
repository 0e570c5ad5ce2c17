/** Licenses that let a program be used and passed on in any product, as long as their notices stay. */
const permissive = [
  "MIT",
  "MIT-0",
  "ISC",
  "0BSD",
  "BSD-2-Clause",
  "BSD-3-Clause",
  "Apache-2.0",
  "BlueOak-1.0.0",
  "CC0-1.0",
  "Unlicense",
  "Zlib",
];

/** Whether an SPDX expression leaves a permissive choice: every part of an AND, one part of an OR. */
export function isPermissive(expression: string): boolean {
  const plain = expression.replace(/^\((.*)\)$/, "$1");
  if (plain.includes(" OR ")) return plain.split(" OR ").some(isPermissive);
  if (plain.includes(" AND ")) return plain.split(" AND ").every(isPermissive);
  return permissive.includes(plain);
}
