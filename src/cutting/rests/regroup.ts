import type { BinFill, FillCount, Model } from "../model/model";
import type { Work } from "../model/work";

/** How often each of two fills is used, and the kind of bin it fills. */
type Split = readonly [first: { count: number; bin: number }, second: { count: number; bin: number }];

/** Copies of one item in each of two fills. */
type Copies = readonly [first: number, second: number];

/** Counts of one kind that are tried, the most uneven first. */
const MOST_SPLITS = 20;
/** Ways to deal pieces out to two fills that are looked at for each split. */
const MOST_VISITS = 300;

/** Puts all pieces of some fills into the same bins in fewer ways. */
export class Regrouping {
  /** How many pieces of each item there are, and the items of which there are any. */
  private readonly totals: Int32Array;
  private readonly items: number[] = [];

  constructor(
    private readonly model: Model,
    readonly work: Work,
  ) {
    this.totals = new Int32Array(model.weights.length);
  }

  /** One fill in place of two, two in place of three; undefined if not found. */
  of(one: FillCount, other: FillCount, third?: FillCount): FillCount[] | undefined {
    this.count(one);
    this.count(other);
    if (third) this.count(third);
    const found = this.dealt(third ? splits(one, other, third) : wholes(one, other));
    for (const item of this.items) this.totals[item] = 0;
    this.items.length = 0;
    return found;
  }

  private count({ fill: { items, copies }, count }: FillCount): void {
    for (let k = 0; k < items.length; k++) {
      const item = items[k]!;
      if (this.totals[item] === 0) this.items.push(item);
      this.totals[item]! += count * copies[k]!;
    }
    this.work.add(10 * items.length);
  }

  private dealt(tried: readonly Split[]): FillCount[] | undefined {
    for (const split of tried) {
      if (!this.mayHold(split)) continue;
      const order = [...this.items].sort((a, b) => a - b);
      const dealt = this.deal(order, split);
      if (!dealt) continue;
      return split.flatMap(({ count, bin }, side) =>
        count > 0 ? [{ fill: fillOf(bin, order, dealt, side), count }] : [],
      );
    }
    return undefined;
  }

  /** Do the pieces that each fill has whatever is chosen fit into it? */
  private mayHold([first, second]: Split): boolean {
    const { model, items, totals } = this;
    let [inFirst, inSecond] = [0, 0];
    for (const item of items) {
      const least = leastCopies(totals[item]!, first.count, second.count);
      if (least === undefined) return false;
      inFirst += model.weights[item]! * leastCopies(totals[item]!, second.count, first.count)!;
      inSecond += model.weights[item]! * least;
      this.work.add(20);
      if (inFirst > model.bins[first.bin]!.capacity || inSecond > model.bins[second.bin]!.capacity) return false;
    }
    return true;
  }

  /** Deals the pieces out so that both fills hold theirs; undefined where that was not found. */
  private deal(order: readonly number[], [first, second]: Split): Copies[] | undefined {
    const { model, totals, work } = this;
    const choices = order.map((item) => ({
      weight: model.weights[item]!,
      ways: waysToDeal(totals[item]!, first.count, second.count),
    }));
    const sure = (side: 0 | 1): number =>
      choices.reduce((sum, { weight, ways }) => sum + weight * ways.at(side - 1)![side], 0);
    const chosen: Copies[] = [];
    let visits = 0;
    const visit = (depth: number, inFirst: number, inSecond: number): boolean => {
      const choice = choices[depth];
      if (!choice) return true;
      if (visits++ > MOST_VISITS) return false;
      const { weight, ways } = choice;
      return ways.some((way) => {
        const one = inFirst + weight * (way[0] - ways.at(-1)![0]);
        const other = inSecond + weight * (way[1] - ways[0]![1]);
        if (one > model.bins[first.bin]!.capacity || other > model.bins[second.bin]!.capacity) return false;
        chosen[depth] = way;
        return visit(depth + 1, one, other);
      });
    };
    const found = visit(0, sure(0), sure(1));
    work.add(30 * visits + 100 * order.length);
    return found ? chosen : undefined;
  }
}

/** All bins filled alike, which they can be only where they are of one kind. */
function wholes(one: FillCount, other: FillCount): Split[] {
  if (one.fill.bin !== other.fill.bin) return [];
  const { bin } = one.fill;
  return [
    [
      { count: one.count + other.count, bin },
      { count: 0, bin },
    ],
  ];
}

/** Two counts in place of three: any where the bins are of one kind, the bins of each kind where they are of two. */
function splits(one: FillCount, other: FillCount, third: FillCount): Split[] {
  const some = [one, other, third];
  const { bin } = one.fill;
  const count = some.reduce((sum, each) => sum + each.count, 0);
  const own = some.reduce((sum, each) => (each.fill.bin === bin ? sum + each.count : sum), 0);
  if (own < count) {
    const odd = other.fill.bin === bin ? third.fill.bin : other.fill.bin;
    if (some.some(({ fill }) => fill.bin !== bin && fill.bin !== odd)) return [];
    return [
      [
        { count: own, bin },
        { count: count - own, bin: odd },
      ],
    ];
  }
  const found: Split[] = [];
  for (let less = 1; 2 * less <= count && less <= MOST_SPLITS; less++) {
    found.push([
      { count: count - less, bin },
      { count: less, bin },
    ]);
  }
  return found;
}

/** The fewest copies in the second fill that make a total; undefined when there are none. */
function leastCopies(total: number, first: number, second: number): number | undefined {
  if (first === 0) return second > 0 && total % second === 0 ? total / second : undefined;
  if (second === 0) return total % first === 0 ? 0 : undefined;
  for (let copies = 0; copies < first && copies * second <= total; copies++) {
    if ((total - copies * second) % first === 0) return copies;
  }
  return undefined;
}

/** Copies in each of two fills that make a total, most in the first one first. */
function waysToDeal(total: number, first: number, second: number): Copies[] {
  if (second === 0) return [[total / first, 0]];
  const ways: Copies[] = [];
  for (let copies = Math.floor(total / first); copies >= 0; copies--) {
    const left = total - copies * first;
    if (left % second === 0) ways.push([copies, left / second]);
  }
  return ways;
}

function fillOf(bin: number, items: readonly number[], dealt: readonly Copies[], side: number): BinFill {
  const held = items.map((item, k) => ({ item, copies: dealt[k]![side]! })).filter(({ copies }) => copies > 0);
  return { bin, items: held.map(({ item }) => item), copies: held.map(({ copies }) => copies) };
}
