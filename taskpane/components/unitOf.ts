import type { LengthStyle } from "../../src/units/formatLength";

/** The unit to show behind what a person typed: none where the text names its own. */
export function unitOf(kind: "length" | "angle" | "count", text: string, style: LengthStyle): string | undefined {
  if (kind === "count" || !/^[\s\d./½¼¾-]*$/.test(text)) return undefined;
  if (kind === "angle") return "°";
  return style === "mm" ? "mm" : "in.";
}
