import { compareGroups, groupCell } from "../takeoff/amounts/groupBy";
import type { RowWork } from "../takeoff/amounts/jobWork";
import { labelKey, rowCell, type Source, type SourceRow, type TakeoffLine } from "../takeoff/amounts/lineBook";
import type { Item } from "../takeoff/amounts/item";
import { sumOf } from "./amounts";

/** All conduit of the job. */
const ALL = "";

/**
 * How the lines of a whole job fall to its groups. A source of one row is its group's; the couplings that come with sticks
 * go by the joints that take them; sticks, and what else no row stands behind, by the feet of conduit of their raceway and
 * size; a box of several groups is in the first of them.
 */
export class Shares {
  private readonly places: ReadonlyMap<string, number>;
  /** Feet of conduit by group: of each raceway and size, and of all. */
  private readonly feet = new Map<string, number[]>();
  /** Couplings that a group's joints take, by their name. */
  private readonly joints = new Map<string, number[]>();

  constructor(
    works: readonly RowWork[],
    private readonly by: readonly string[],
    private readonly groups: readonly (readonly string[])[],
  ) {
    this.places = new Map(groups.map((cells, place) => [labelKey(cells), place]));
    for (const { run, amounts, joints, coupling } of works) {
      const place = this.placeOf(by.map((column) => groupCell(run, column)));
      if (joints > 0) this.add(this.joints, coupling.name, place, joints * run.quantity);
      for (const { item, each, times = run.quantity } of amounts) {
        if (item.kind !== "conduit") continue;
        for (const key of [conduitKey(item), ALL]) this.add(this.feet, key, place, each * times);
      }
    }
  }

  private add(to: Map<string, number[]>, key: string, place: number, amount: number): void {
    const parts = to.get(key) ?? this.none();
    to.set(key, parts);
    parts[place]! += amount;
  }

  /** Nothing in any group. */
  none(): number[] {
    return this.groups.map(() => 0);
  }

  /** Parts of a line by group, to share out by; their sum is above zero. */
  ofLine(line: TakeoffLine): number[] {
    const parts = this.none();
    for (const source of line.sources) {
      for (const [place, quantity] of this.quantities(line, source)) parts[place]! += quantity;
    }
    return sumOf(parts) > 0 ? parts : this.byFeet(line.item);
  }

  /** What of a source's quantity falls to which group, by the place of the group. */
  quantities(
    { item }: TakeoffLine,
    { rows, each, times }: Source,
  ): readonly (readonly [place: number, quantity: number])[] {
    const [row] = rows;
    if (row && item.kind !== "stick") return [[this.firstOf(rows), each * times]];
    const weights = this.joints.get(item.inPlaceOf ?? item.name) ?? this.byFeet(item);
    const all = sumOf(weights);
    return weights.flatMap((weight, place) => (weight === 0 ? [] : [[place, (each * times * weight) / all]]));
  }

  /** The group of a row, or the first of the groups of several. */
  private firstOf(rows: readonly SourceRow[]): number {
    const groups = rows.map((each) => this.by.map((column) => rowCell(each, column)));
    return this.placeOf(groups.reduce((least, cells) => (compareGroups(this.by, cells, least) < 0 ? cells : least)));
  }

  private byFeet(item: Item): number[] {
    const feet = [conduitKey(item), ALL].flatMap((key) => [this.feet.get(key) ?? []]);
    return feet.find((parts) => sumOf(parts) > 0) ?? this.groups.map((_, place) => (place === 0 ? 1 : 0));
  }

  private placeOf(cells: readonly string[]): number {
    return this.places.get(labelKey(cells)) ?? 0;
  }
}

const conduitKey = ({ raceway, size }: Pick<Item, "raceway" | "size">): string => labelKey([raceway ?? "", size ?? ""]);
