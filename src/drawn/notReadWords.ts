import type { NotRead } from "./file/drawing";

/** What was not read, in a line: layer, what it is, where, why. */
export function notReadWords({ layer, what, why, at, times }: NotRead): string {
  const place = at ? ` at ${at.map((value) => String(Number(value.toFixed(3)))).join(" ")}` : "";
  return `${layer}: ${what}${place}${times > 1 ? `, ${times} times` : ""}: ${why}`;
}
