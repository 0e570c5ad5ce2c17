import { compareGroups, groupCell } from "../takeoff/amounts/groupBy";
import type { RowWork } from "../takeoff/amounts/jobWork";
import { labelKey, rowCell, type Source, type TakeoffLine } from "../takeoff/amounts/lineBook";
import type { Item } from "../takeoff/amounts/item";
import { sumOf } from "./amounts";

/** All conduit of the job. */
const ALL = "";

/**
 * How the lines of a whole job fall to its groups. A source of one row is its group's; sticks, and what no row stands
 * behind, go by the feet of conduit of their raceway and size; a box of several groups is in the first of them.
 */
export class Shares {
  private readonly places: ReadonlyMap<string, number>;
  /** Feet of conduit by group: of each raceway and size, and of all. */
  private readonly feet = new Map<string, number[]>();

  constructor(
    works: readonly RowWork[],
    private readonly by: readonly string[],
    private readonly groups: readonly (readonly string[])[],
  ) {
    this.places = new Map(groups.map((cells, place) => [labelKey(cells), place]));
    for (const { run, amounts } of works) {
      const place = this.placeOf(by.map((column) => groupCell(run, column)));
      for (const { item, each, times = run.quantity } of amounts) {
        if (item.kind !== "conduit") continue;
        for (const key of [conduitKey(item), ALL]) {
          const feet = this.feet.get(key) ?? groups.map(() => 0);
          feet[place]! += each * times;
          this.feet.set(key, feet);
        }
      }
    }
  }

  /** Nothing in any group. */
  none(): number[] {
    return this.groups.map(() => 0);
  }

  /** Parts of a line by group; their sum is above zero. */
  ofLine(line: TakeoffLine): number[] {
    const parts = this.none();
    for (const source of line.sources) {
      const weights = this.ofSource(line, source);
      const all = sumOf(weights);
      weights.forEach((weight, place) => (parts[place]! += (source.each * source.times * weight) / all));
    }
    return sumOf(parts) > 0 ? parts : this.byFeet(line.item);
  }

  /** Parts of a source of a line by group; their sum is above zero. */
  ofSource({ item }: TakeoffLine, { rows }: Source): number[] {
    const [row] = rows;
    if (!row || item.kind === "stick") return this.byFeet(item);
    const groups = rows.map((each) => this.by.map((column) => rowCell(each, column)));
    const first = groups.reduce((least, cells) => (compareGroups(this.by, cells, least) < 0 ? cells : least));
    return this.at(this.placeOf(first));
  }

  private byFeet(item: Item): number[] {
    const feet = [conduitKey(item), ALL].flatMap((key) => [this.feet.get(key) ?? []]);
    return feet.find((parts) => sumOf(parts) > 0) ?? this.at(0);
  }

  private at(place: number): number[] {
    return this.groups.map((_, other) => (other === place ? 1 : 0));
  }

  private placeOf(cells: readonly string[]): number {
    return this.places.get(labelKey(cells)) ?? 0;
  }
}

const conduitKey = ({ raceway, size }: Pick<Item, "raceway" | "size">): string => labelKey([raceway ?? "", size ?? ""]);
