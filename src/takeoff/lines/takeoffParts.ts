import { toCent } from "../../units/money";
import { labelKey, type TakeoffLine } from "../amounts/lineBook";
import type { PricedLine } from "./priceLine";

/** Lines of a take-off that stand together under a heading, and what they come to. */
export interface TakeoffPart {
  /** The group's columns, or raceway and size where there are no groups; empty for what belongs to no one of them. */
  readonly heading: string;
  /** How many lines of the table stand under it. */
  readonly count: number;
  /** Sum of the lines that have a price, to the cent; null where none has. */
  readonly extension: number | null;
  /** Sum of the lines that have minutes [h]; null where none has. */
  readonly hours: number | null;
  /** Lines that are bought or worked on and have no price or no minutes: not in the sums. */
  readonly lacking: number;
}

/** Parts the lines of a take-off, in their order, where the heading changes. */
export function takeoffParts(priced: readonly PricedLine[], isGrouped: boolean): TakeoffPart[] {
  const labelsOf = ({ group, item }: TakeoffLine) =>
    isGrouped ? group : item.raceway && item.size ? [item.raceway, item.size] : [];
  const parts: { key: string; heading: string; lines: PricedLine[] }[] = [];
  for (const each of priced) {
    const labels = labelsOf(each.line);
    const key = labelKey(labels);
    if (parts.at(-1)?.key !== key)
      parts.push({ key, heading: labels.filter(Boolean).join(isGrouped ? ", " : " "), lines: [] });
    parts.at(-1)!.lines.push(each);
  }
  return parts.map(({ heading, lines }) => {
    const extension = sumOf(lines.map((line) => line.extension));
    return {
      heading,
      count: lines.length,
      extension: extension === null ? null : toCent(extension),
      hours: sumOf(lines.map(({ hours }) => hours)),
      lacking: lines.filter(({ noPrice, noLabor }) => noPrice !== null || noLabor.length > 0).length,
    };
  });
}

/** The sum of what is there; null for nothing. */
function sumOf(values: readonly (number | null)[]): number | null {
  const there = values.filter((value) => value !== null);
  return there.length === 0 ? null : there.reduce((sum, value) => sum + value, 0);
}
