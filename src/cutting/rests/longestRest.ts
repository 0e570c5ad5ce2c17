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
      const tried = new Set<string>();
      for (let n = 0; n < TRIES && !this.work.over() && !this.excluded(kind, this.cuts); n++) {
        const free = this.freeBins(kind);
        const aim = free && leastBeside(this.rest.model, this.cuts, kind, this.room(kind), free, this.work, tried);
        if (!aim || aim.cost > this.budget(kind)) break;
        tried.add(aim.counts.join());
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
    const search = new RoomSearch(rest.model, others, kind, known, this.room(kind) + 1, this.cuts);
    if (suitsSqueezing(rest.model)) yield* squeezeRoom(search, pairs.length === 0, seed, work);
    yield* bisectRoom(search, seed, work);
    if (!search.plan) return;
    const plan = [...pairs, ...rest.outward(search.plan)];
    const fewer = countFree(model, plan) - countFree(model, this.plan);
    if (fewer < 0 || longestIn(model, sticks, plan) > longestIn(model, sticks, this.plan)) this.plan = plan;
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

  /** The most room that pieces may take on a stick of this kind for a longer rest than there is. */
  private room(kind: number): number {
    const { lengths, step } = this.sticks;
    return Math.floor((lengths[kind]! - longestIn(this.model, this.sticks, this.plan) - 1) / step);
  }

  /** What the bins beside one of this kind and the pairs may cost. */
  private budget(kind: number): number {
    return planCost(this.model, this.plan) - planCost(this.model, this.pairs) - this.model.bins[kind]!.cost;
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
