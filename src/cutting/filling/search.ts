import { leastCounts, volumeCut } from "../model/counts";
import type { BinCounts, Cut } from "../model/counts";
import { dive, PACES, roundedOff } from "./dive";
import type { DiveTools } from "./dive";
import { downsize } from "./downsize";
import { Branching, suitsBranching } from "../branching/branching";
import { bestFit } from "../greedy/bestFit";
import { thriftyOrder } from "../greedy/binOrder";
import { firstFit } from "../greedy/firstFit";
import { Master, suitsProgram } from "../linear/master";
import { planCost } from "../model/model";
import type { FillCount, Model } from "../model/model";
import { quiet } from "../model/packing";
import type { Packing, Standing } from "../model/packing";
import { prove } from "./prove";
import { seededRandom } from "../model/random";
import { fillAndDive, suitsFilling } from "./reach";
import { squeezeInto, suitsSqueezing } from "./squeezeInto";
import type { Work } from "../model/work";

/** Dives before everything starts again with fresh columns: some starts never get there, the next one at once. */
const DIVES_PER_START = 6;
/** Starts before all cases are looked at, and steps that may take. */
const BRANCH_AFTER = 1;
const BRANCH_STEPS = 6e8;
/** Fillings before the linear program of the whole is tried. */
const FILL_TRIES = 6;

/**
 * Packs everything at the least cost it can find and proves how low the cost can be at all: the cheapest counts of bins
 * not yet excluded are aimed at; either the linear program excludes them, or a plan for them is sought by squeezing,
 * filling and diving.
 */
export class Search {
  readonly best: Packing;
  private readonly greedy: FillCount[][];
  private readonly cuts: Cut[];
  private readonly squeezable: boolean;
  /** The plan found last, be it good or not. */
  private latest: FillCount[];
  private random: () => number;

  constructor(
    private readonly model: Model,
    private readonly seed: number,
    private readonly work: Work,
  ) {
    const limits = model.bins.map((bin) => bin.limit);
    this.greedy = [bestFit(model, model.demands, limits, thriftyOrder(model), work), firstFit(model, work)];
    this.cuts = [volumeCut(model, work)];
    this.squeezable = suitsSqueezing(model);
    this.latest = this.greedy[0]!;
    this.random = seededRandom(seed);
    this.best = {
      plan: this.latest,
      cost: planCost(model, this.latest),
      bound: leastCounts(model.bins, this.cuts, work)!.bound,
      pairs: [],
      cuts: this.cuts,
    };
    this.greedy.forEach(this.offer);
  }

  *run(): Generator<Standing, Packing> {
    const { model, best, work, cuts } = this;
    for (let start = 0; !work.over(); start++) {
      this.random = seededRandom(this.seed + start);
      const aim = leastCounts(model.bins, cuts, work)!;
      best.bound = Math.max(best.bound, aim.bound);
      if (this.proven() || aim.cost >= best.cost) break;
      if (start === 0) yield* this.withoutProgram(aim);
      if (this.proven() || !suitsProgram(model)) break;
      yield* this.withProgram(aim, start);
      if (this.proven()) break;
      if (start === BRANCH_AFTER) yield* this.branch();
    }
    return best;
  }

  private readonly offer = (found: FillCount[]): void => {
    this.latest = found;
    const plan = downsize(this.model, found);
    const cost = planCost(this.model, plan);
    if (cost >= this.best.cost) return;
    this.best.plan = plan;
    this.best.cost = cost;
  };

  private proven(): boolean {
    return this.best.cost <= this.best.bound;
  }

  /** Where one bin less is neither found nor excluded: looks at every case. */
  private *branch(): Generator<Standing, void> {
    const { model, best, work, random } = this;
    const { cost } = model.bins[0]!;
    if (best.cost !== best.bound + cost || !suitsBranching(model)) return;
    const branching = new Branching(model, best.bound / cost, [...best.plan], random, work);
    const { plan, proof } = yield* quiet(work.within(BRANCH_STEPS, branching.run()), best);
    if (plan) this.offer(plan);
    if (!proof) return;
    best.branches = proof;
    best.bound = best.cost;
  }

  /** Tries to get there before the linear program of the whole is set up. */
  private *withoutProgram(aim: BinCounts): Generator<Standing, void> {
    const { model, best } = this;
    if (this.squeezable) yield* this.squeezeTo(aim);
    for (let n = 0; n < FILL_TRIES && suitsFilling(model, aim.counts) && best.cost > aim.cost; n++) {
      const filled = yield* quiet(fillAndDive(model, aim.counts, this.tools), best);
      if (filled) this.offer(filled);
    }
  }

  /** One linear program: the cheapest counts it does not exclude are dived for, then the next. */
  private *withProgram(first: BinCounts, start: number): Generator<Standing, void> {
    const { model, best, work, cuts } = this;
    const tried = new Set<string>();
    const master = new Master(model, work, this.random);
    master.start([...this.greedy, best.plan], first.counts, this.random);
    for (
      let aim: BinCounts | undefined = first;
      aim && aim.cost < best.cost;
      aim = leastCounts(model.bins, cuts, work, tried)
    ) {
      const proof: BinCounts | undefined = yield* prove(master, aim, start > 0, tried, best, work);
      if (!proof && work.over()) this.offer(roundedOff(master, aim.counts, work));
      if (!proof || this.proven() || work.over()) return;
      yield* this.diveFor(proof, master, start);
      if (this.proven() || work.over()) return;
      tried.add(proof.counts.join());
    }
  }

  /** Dives from where the master stands; what a dive leaves over may be squeezed in. */
  private *diveFor(aim: BinCounts, master: Master, start: number): Generator<Standing, void> {
    const { model, best, work } = this;
    const root = master.simplex.save();
    for (let n = 0; n < DIVES_PER_START && aim.cost < best.cost && !work.over(); n++) {
      const loose = n >= 2 && best.cost > aim.cost + model.bins[0]!.cost;
      const counts = loose ? [aim.counts[0]! + 1, ...aim.counts.slice(1)] : aim.counts;
      if (n > 0) master.simplex.restore(root);
      const noise = n === 0 && start === 0 ? 0 : 0.4;
      const found = yield* quiet(dive(master, counts, noise, PACES[n] ?? Infinity, n, [], this.tools), best);
      if (found) this.offer(found);
      else if (this.squeezable) yield* this.squeezeTo(aim, this.latest);
    }
  }

  private *squeezeTo({ counts }: BinCounts, from?: FillCount[]): Generator<Standing, void> {
    const { model, best, work, random } = this;
    const found = yield* quiet(squeezeInto(model, counts, from, random, work), best);
    if (found) this.offer(found);
  }

  private get tools(): DiveTools {
    return { random: this.random, work: this.work, offer: this.offer };
  }
}
