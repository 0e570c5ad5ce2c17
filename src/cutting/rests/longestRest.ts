import { takePairs } from "../filling/pairs";
import { suitsSqueezing } from "../filling/squeezeInto";
import { neededCuts, type Cut } from "../model/counts";
import { binCounts, fillWeight, planCost, restOf, type Rest } from "../model/model";
import type { FillCount, Model } from "../model/model";
import type { Sticks } from "../model/toModel";
import type { Work } from "../model/work";
import { bisectRoom } from "./bisectRoom";
import { leastBeside, roomCut, type RoomCut } from "./restCuts";
import { RoomSearch } from "./roomSearch";
import { squeezeRoom } from "./squeezeRoom";

/** What proves that no plan leaves a longer rest: bins that such a plan may have, and prices about the other pieces. */
export interface RestProof {
  pairs: FillCount[];
  prices: Float64Array[];
}

/** Different numbers of bins that are tried for each kind of bin to be emptied. */
const TRIES = 8;

/** The longest rest of a plan, over all its sticks. */
export function longestIn(model: Model, { lengths, step }: Sticks, plan: readonly FillCount[]): number {
  return plan.reduce((most, { fill }) => Math.max(most, lengths[fill.bin]! - step * fillWeight(model, fill)), 0);
}

/**
 * Looks for a plan of the same cost, with no more sticks that cost nothing, that leaves a longer rest on one of its
 * sticks, of whatever kind. With one kind of bin, pieces too heavy to lie in the emptied bin are paired off first.
 */
export class LongestRest {
  private readonly rest: Rest;
  private readonly pairs: FillCount[] = [];
  private readonly cuts: RoomCut[] = [];

  /**
   * @param plan a plan of the least cost; the best so far
   * @param cuts what is proven about all pieces
   */
  constructor(
    private readonly model: Model,
    private readonly sticks: Sticks,
    public plan: FillCount[],
    cuts: readonly Cut[],
    private readonly work: Work,
  ) {
    if (model.bins.length > 1) {
      this.rest = restOf(model, model.demands);
    } else {
      const { pairs, left } = takePairs(model, work, this.room(0) + 1);
      this.pairs = pairs;
      this.rest = restOf(model, left);
    }
    const valid = this.pairs.length > 0 ? [] : cuts.map(({ prices }) => prices);
    for (const prices of [...valid, Float64Array.from(this.rest.model.weights)]) {
      this.cuts.push(roomCut(this.rest.model, prices, work));
    }
  }

  *run(seed: number): Generator<void, void> {
    for (const kind of this.kinds()) {
      /** Numbers that were tried: beside the plan's bins without cost, and beside the roomiest. */
      const tried = [new Set<string>(), new Set<string>()] as const;
      for (let n = 0; n < TRIES && !this.work.over() && !this.excluded(kind, this.cuts); n++) {
        const free = n % 2 === 0 ? this.freeBins(kind) : this.roomiest(kind);
        const skip = tried[n % 2]!;
        const aim = free && leastBeside(this.rest.model, this.cuts, kind, this.room(kind), free, this.work, skip);
        if (!aim || aim.cost > this.budget(kind)) continue;
        skip.add(aim.counts.join());
        const others = aim.counts.map((count, k) => count + free[k]!);
        yield* this.empty(kind, others, seed);
      }
    }
  }

  /** What proves that there is no longer rest; undefined when that is not proven. */
  proof(): RestProof | undefined {
    const proven = (cuts: readonly RoomCut[]): boolean => this.kinds().every((kind) => this.excluded(kind, cuts));
    if (!proven(this.cuts)) return undefined;
    return { pairs: this.pairs, prices: neededCuts(this.cuts, proven).map(({ prices }) => this.rest.spread(prices)) };
  }

  /** Empties a bin of this kind beside the others as far as that works out. */
  private *empty(kind: number, others: readonly number[], seed: number): Generator<void, void> {
    const { model, sticks, rest, pairs, work } = this;
    const known = this.plan.flatMap(({ fill, count }) => {
      const inward = rest.inward(fill);
      return inward ? { fill: inward, count } : [];
    });
    // No stick is cut that was whole for a rest that is shorter.
    const enough = this.room(kind, this.longestTaken(kind, others)) + 1;
    const search = new RoomSearch(rest.model, others, kind, known, enough, this.cuts);
    if (suitsSqueezing(rest.model)) yield* squeezeRoom(search, pairs.length === 0, seed, work);
    yield* bisectRoom(search, seed, work);
    if (!search.plan) return;
    const plan = [...pairs, ...rest.outward(search.plan)];
    const fewer = countFree(model, plan) - countFree(model, this.plan);
    if (fewer < 0 || longestIn(model, sticks, plan) > longestIn(model, sticks, this.plan)) this.plan = plan;
  }

  /** The longest stick without cost that is left whole so far and would be cut in these bins and one of `kind`. */
  private longestTaken(kind: number, others: readonly number[]): number {
    const { model, sticks, plan } = this;
    const before = binCounts(model, plan);
    const isTaken = (count: number, k: number) => isFree(model, k) && count + (k === kind ? 1 : 0) > before[k]!;
    return Math.max(...others.map((count, k) => (isTaken(count, k) ? sticks.lengths[k]! : 0)));
  }

  /** Is it proven that no stick of this kind has a longer rest? */
  private excluded(kind: number, cuts: readonly RoomCut[]): boolean {
    const room = this.room(kind);
    const lightest = this.rest.model.weights.at(-1) ?? Infinity;
    const free = countFree(this.model, this.plan) - (isFree(this.model, kind) ? 1 : 0);
    if (room < lightest || free < 0) return true;
    const least = leastBeside(this.rest.model, cuts, kind, room, free, this.work);
    return !least || least.bound > this.budget(kind);
  }

  /** The kinds of bins there are sticks for. */
  private kinds(): number[] {
    const { lengths } = this.sticks;
    return lengths.map((_, k) => k).filter((k) => lengths[k]! > 0);
  }

  /** The most room that pieces may take on a stick of this kind for a longer rest than there is, and than `whole`. */
  private room(kind: number, whole = 0): number {
    const { lengths, step } = this.sticks;
    const longest = Math.max(whole, longestIn(this.model, this.sticks, this.plan));
    return Math.floor((lengths[kind]! - longest - 1) / step);
  }

  /** What the bins beside one of this kind and the pairs may cost. */
  private budget(kind: number): number {
    return planCost(this.model, this.plan) - planCost(this.model, this.pairs) - this.model.bins[kind]!.cost;
  }

  /** As many bins without cost as the plan has, the roomiest there are, beside one of this kind; undefined when it has none. */
  private roomiest(kind: number): number[] | undefined {
    const { bins } = this.model;
    const own = isFree(this.model, kind) ? 1 : 0;
    let left = countFree(this.model, this.plan) - own;
    if (left < 0) return undefined;
    const counts = bins.map(() => 0);
    const free = bins.map((_, k) => k).filter((k) => isFree(this.model, k));
    for (const k of free.sort((a, b) => bins[b]!.capacity - bins[a]!.capacity)) {
      counts[k] = Math.min(left, bins[k]!.limit - (k === kind ? own : 0));
      left -= counts[k]!;
    }
    return counts;
  }

  /** The bins without cost that the plan has beside one of this kind; undefined when it has none of the kind. */
  private freeBins(kind: number): number[] | undefined {
    const counts = binCounts(this.model, this.plan).map((count, k) => (isFree(this.model, k) ? count : 0));
    if (!isFree(this.model, kind)) return counts;
    counts[kind]!--;
    return counts[kind]! < 0 ? undefined : counts;
  }
}

const isFree = ({ bins }: Model, kind: number): boolean => kind > 0 && bins[kind]!.cost === 0;

const countFree = (model: Model, plan: readonly FillCount[]): number =>
  plan.reduce((sum, { fill, count }) => (isFree(model, fill.bin) ? sum + count : sum), 0);
