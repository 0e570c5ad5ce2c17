import { compareGroups, readBy, RUN_GROUP_NAMES } from "../takeoff/amounts/groupBy";
import { stockIn } from "../takeoff/cuts/cutStock";
import { lineHours } from "../takeoff/lines/lineHours";
import type { PricedLine } from "../takeoff/lines/priceLine";
import { takeOff, type TakenOff, type TakeoffInParts, type TakeoffRanges } from "../takeoff/lines/takeoff";
import { takeoffParts } from "../takeoff/lines/takeoffParts";
import { tableOfParts, type Subtotal, type TakeoffView } from "../takeoff/lines/takeoffTable";
import { moneyOf, sharedCents } from "./amounts";
import { groupsOf, type Group } from "./groups";
import { Shares } from "./shares";

/** Less of a quantity than this is none: what the shares of a whole leave [ft or pieces]. */
const NONE = 1e-9;

const WORDS = "one order for the whole job: what belongs to no one group, as sticks, is shared by feet of conduit";

/**
 * The take-off of a whole job told apart by groups, as a table with a header row: one order, with what is on hand, whose
 * lines fall to the groups as a recap has it. A subtotal stands below each group and below what groups have in common;
 * they add up to the total without groups to the cent.
 *
 * @throws InputError when a range lacks a needed column or `by` names none
 */
export function takeoffInGroups(runs: unknown, ranges: TakeoffRanges = {}): (string | number)[][] {
  const { priced, work, view, groups, perGroup } = inGroups(runs, ranges);
  const adds = view.prices !== undefined || view.labor !== undefined;
  return tableOfParts(priced, work, view, adds ? withSubtotals(groups, perGroup) : perGroup.flat());
}

/** The same without subtotals, which the headings of its parts have. */
export function groupedParts(runs: unknown, ranges: TakeoffRanges = {}): TakeoffInParts {
  const { priced, work, view, perGroup } = inGroups(runs, ranges);
  const lines = perGroup.flat();
  return { table: tableOfParts(priced, work, view, lines), parts: takeoffParts(lines, view.by.length > 0) };
}

interface InGroups extends TakenOff {
  readonly groups: readonly Group[];
  /** The lines of each group. */
  readonly perGroup: readonly (readonly PricedLine[])[];
}

function inGroups(runs: unknown, ranges: TakeoffRanges): InGroups {
  const by = readBy(ranges.by, RUN_GROUP_NAMES, []);
  const notes = by.length === 0 ? [] : [WORDS];
  const whole = takeOff(runs, ranges, { by: [], stock: stockIn(ranges.stock), notes });
  const { priced, work, counts, view } = whole;
  if (by.length === 0) return { ...whole, groups: [], perGroup: [priced] };
  const groups = groupsOf({ works: work.works, counts }, by).sort((a, b) => compareGroups(by, a, b));
  const shares = new Shares(work.works, by, groups);
  const parts = priced.map((line) => partsOf(line, groups, shares, view));
  const perGroup = groups.map((_, place) => parts.flatMap((part) => part[place] ?? []));
  return { ...whole, view: { ...view, by }, groups, perGroup };
}

/** What of a line falls to each group; undefined where nothing does. */
function partsOf(
  whole: PricedLine,
  groups: readonly Group[],
  shares: Shares,
  { labor }: TakeoffView,
): (PricedLine | undefined)[] {
  const { line, extension } = whole;
  const money = extension === null ? undefined : sharedCents(extension, shares.ofLine(line)).map(moneyOf);
  const lines = groups.map((group) => ({ ...line, group, quantity: 0, operations: new Map<string, number>() }));
  for (const source of line.sources) {
    for (const [place, quantity] of shares.quantities(line, source)) {
      if (Math.abs(quantity) < NONE) continue;
      const part = lines[place]!;
      part.quantity += quantity;
      part.operations.set(source.operation, (part.operations.get(source.operation) ?? 0) + quantity);
    }
  }
  return lines.map((part, place) => {
    if (part.quantity === 0 && !money?.[place]) return undefined;
    const hours =
      labor && line.operations.size > 0 && part.operations.size > 0
        ? lineHours(line.item, part.operations, labor).hours
        : null;
    return { ...whole, line: part, extension: money?.[place] ?? null, hours };
  });
}

/** The lines of each group and their sum; where several groups have their first cells in common, the sum of those, too. */
function withSubtotals(
  groups: readonly Group[],
  perGroup: readonly (readonly PricedLine[])[],
): (PricedLine | Subtotal)[] {
  if (groups.length === 0) return perGroup.flat();
  return groups.flatMap((group, place): (PricedLine | Subtotal)[] => {
    const outer = group.slice(1).flatMap((_, cut): Subtotal[] => {
      const shared = group.slice(0, group.length - 1 - cut);
      const next = groups[place + 1];
      if (next && startsWith(next, shared)) return [];
      const among = groups.flatMap((other, at) => (startsWith(other, shared) ? [at] : []));
      return among.length > 1 ? [{ group: shared, lines: among.flatMap((at) => perGroup[at]!) }] : [];
    });
    const own = perGroup[place]!;
    return own.length > 0 ? [...own, { group, lines: own }, ...outer] : outer;
  });
}

const startsWith = (group: Group, cells: Group): boolean => cells.every((cell, at) => group[at] === cell);
