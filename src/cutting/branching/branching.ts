import { tightFills } from "../greedy/tightFills";
import { SCALE, BIN_TOLERANCE } from "../linear/generate";
import { Simplex } from "../linear/simplex";
import { piecesLeft } from "../model/model";
import type { FillCount, Model } from "../model/model";
import { openBins, planOf } from "../model/packed";
import type { Branch } from "../model/packing";
import type { Work } from "../model/work";
import { dearestStick } from "./dearest";
import { Rules, type Two } from "./rules";

/** More pieces, or more room to look through, and a branch takes too long. */
const MOST_PIECES = 300;
const MOST_TABLE = 2e6;
/** Branches of the first two attempts; each two more take twice as many, up to the most of one proof. */
const FEW_BRANCHES = 200;
const MOST_BRANCHES = 2000;
/** How much heavy pieces are preferred, attempt by attempt: either may be much the shorter way. */
const HEAVY_FIRST = [1.5, 0.1];
/** What a fill costs that a branch does not allow. */
const FORBIDDEN = 3;
/** A part of a fill smaller than this is none. */
const TINY = 1e-3;

/** A plan for so few bins, or the proof that there is none. */
export interface Branched {
  plan?: FillCount[];
  proof?: Branch;
}

/** Is the problem one of a single kind of bin, and small enough? */
export function suitsBranching({ demands, bins }: Model): boolean {
  const pieces = piecesLeft(demands);
  return bins.length === 1 && pieces <= MOST_PIECES && pieces * bins[0]!.capacity <= MOST_TABLE;
}

/**
 * Do all pieces fit into so many bins? Two pieces lie in one bin or they do not: each branch goes on with one of the two
 * taken for granted, until prices prove that it will not do. Every piece is a row of its own.
 */
export class Branching {
  private readonly weights: Int32Array;
  /** Item of each piece. */
  private readonly items: number[];
  private readonly spare: number;
  private readonly simplex: Simplex;
  private readonly fills: ReadonlySet<number>[] = [];
  private readonly rules: Rules;
  /** Branches that are left, and how much heavy pieces are preferred. */
  private branches = 0;
  private heavyFirst = 0;
  private plan: FillCount[] | undefined;

  constructor(
    private readonly model: Model,
    private readonly bins: number,
    known: readonly FillCount[],
    private readonly random: () => number,
    private readonly work: Work,
  ) {
    this.items = [...model.weights.keys()].flatMap((item) => new Array<number>(model.demands[item]!).fill(item));
    this.weights = Int32Array.from(this.items, (item) => model.weights[item]!);
    this.spare = this.weights.reduce((room, weight) => room - weight, bins * model.bins[0]!.capacity);
    this.rules = new Rules(this.weights);
    this.simplex = new Simplex(this.weights.length, work);
    this.start(known);
  }

  *run(): Generator<void, Branched> {
    let proof: Branch | undefined;
    for (let attempt = 0; this.spare >= 0 && !proof && !this.plan && !this.work.over(); attempt++) {
      this.branches = FEW_BRANCHES * 2 ** (attempt >> 1);
      if (this.branches > MOST_BRANCHES) break;
      this.heavyFirst = HEAVY_FIRST[attempt % 2]!;
      proof = yield* this.branch();
    }
    return { plan: this.plan, proof };
  }

  private start(known: readonly FillCount[]): void {
    const { simplex, items, random } = this;
    items.forEach((_, piece) => this.add([piece]));
    const firstOf = new Map<number, number>();
    items.forEach((item, piece) => firstOf.set(item, firstOf.get(item) ?? piece));
    const next = new Map(firstOf);
    for (const bin of openBins(known)) {
      this.add(bin.items.map((item) => next.set(item, next.get(item)! + 1).get(item)! - 1));
    }
    for (const fill of tightFills(this.model, random, this.work)) {
      this.add(
        fill.items.flatMap((item, k) => Array.from({ length: fill.copies[k]! }, (_, n) => firstOf.get(item)! + n)),
      );
    }
    items.forEach((_, piece) => (simplex.rhs[piece] = 1 + 1e-6 * (0.5 + random())));
    simplex.setBasis(items.map((_, piece) => piece));
  }

  private add(pieces: readonly number[]): boolean {
    const rows = [...pieces].sort((a, b) => a - b);
    const column = this.simplex.addColumn(
      rows,
      rows.map(() => 1),
      1,
    );
    if (column !== undefined) this.fills[column] = new Set(rows);
    return column !== undefined;
  }

  /** The proof that what is taken for granted leaves no plan; undefined when that was not found, or a plan was. */
  private *branch(): Generator<void, Branch | undefined> {
    yield;
    if (--this.branches < 0 || this.work.over()) return undefined;
    const prices = this.provenHopeless();
    if (prices) return { prices };
    const two = this.work.over() ? undefined : this.undecided();
    if (!two) return undefined;
    const together = yield* this.rules.assuming("together", two, this.branch());
    if (!together) return undefined;
    const apart = yield* this.rules.assuming("apart", two, this.branch());
    return apart && { pieces: [...two], together, apart };
  }

  /** Prices that prove that the branch needs more bins; undefined when the linear program does with these. */
  private provenHopeless(): number[] | undefined {
    const { simplex, rules, work, bins, spare } = this;
    const made = rules.bundles();
    const capacity = this.model.bins[0]!.capacity;
    if (!made || made.bundles[0]!.weight > capacity) return this.items.map(() => 0);
    this.fills.forEach((fill, column) => (simplex.pool.costs[column] = this.isAllowed(fill) ? 1 : FORBIDDEN));
    simplex.refreshPrices();
    while (simplex.primal()) {
      if (simplex.value() <= bins + BIN_TOLERANCE) return undefined;
      const prices = Float64Array.from(simplex.prices, (price) => Math.floor(Math.max(0, price) * SCALE));
      const room = { capacity, spare, above: SCALE };
      const { best, sticks } = dearestStick(made.bundles, made.foes, prices, room, work);
      if (prices.reduce((sum, price) => sum + price, 0) > best * bins) return [...prices];
      if (sticks.filter((stick) => this.add(stick)).length === 0) return undefined;
    }
    return undefined;
  }

  /** A fill that leaves more than there is to spare in all bins together is of no use. */
  private isAllowed(fill: ReadonlySet<number>): boolean {
    let room = this.model.bins[0]!.capacity;
    for (const piece of fill) room -= this.weights[piece]!;
    return room <= this.spare && this.rules.allow(fill, this.work);
  }

  /** Two pieces that lie together in about half of the plan; keeps the plan where there are none. */
  private undecided(): Two | undefined {
    const { simplex, weights, model } = this;
    const shares = new Map<number, number>();
    const count = weights.length;
    for (let place = 0; place < count; place++) {
      const column = simplex.basis[place]!;
      const share = simplex.x[place]!;
      if (column < 0 || share < TINY) continue;
      const pieces = [...this.fills[column]!];
      pieces.forEach((one, k) => {
        for (const other of pieces.slice(k + 1)) {
          shares.set(one * count + other, (shares.get(one * count + other) ?? 0) + share);
        }
      });
    }
    let most = 0;
    let two: Two | undefined;
    for (const [key, share] of shares) {
      const [one, other] = [Math.floor(key / count), key % count];
      const score = Math.min(share, 1 - share);
      const heavy = (this.heavyFirst * (weights[one]! + weights[other]!)) / model.bins[0]!.capacity;
      const chance = 0.1 * this.random();
      if (score < TINY || score + heavy + chance <= most) continue;
      most = score + heavy + chance;
      two = [one, other];
    }
    if (!two) this.plan = this.wholePlan();
    return two;
  }

  /** The fills that the linear program takes, each piece once; undefined when that are too many bins. */
  private wholePlan(): FillCount[] | undefined {
    const { simplex, items, bins } = this;
    const open = new Set(items.keys());
    const plan: number[][] = [];
    for (let place = 0; place < items.length; place++) {
      const column = simplex.basis[place]!;
      if (column < 0 || simplex.x[place]! < 0.5) continue;
      plan.push([...this.fills[column]!].filter((piece) => open.delete(piece)));
    }
    if (open.size > 0 || plan.length > bins) return undefined;
    return planOf(plan.map((pieces) => ({ kind: 0, items: pieces.map((piece) => items[piece]!) })));
  }
}
