import { BIN_TOLERANCE, generate } from "../linear/generate";
import { bestFit } from "../greedy/bestFit";
import { mainLast } from "../greedy/binOrder";
import { Master } from "../linear/master";
import { restOf, takeFill, trimFill } from "../model/model";
import type { BinFill, FillCount, Model } from "../model/model";
import type { Work } from "../model/work";

/** What a dive needs besides the program itself. */
export interface DiveTools {
  random: () => number;
  work: Work;
  /** Told every complete plan met on the way, even when it takes too many bins. */
  offer: (plan: FillCount[]) => void;
}

/** A part of a fill from which on it is rounded up. */
const HALF = 0.5;

/** Dives from each smaller program before its parent chooses anew. */
const TRIES = 3;
/** A new, smaller program is made when this share of the weights is left. */
const SHRINK = 0.6;
/** Each try rounds up one part in this many of the bins left at a time: later ones go gently. */
export const PACES = [10, 20, 40];

/**
 * One dive: settle the whole parts of the linear program, then some of its fullest fractions, solve what is left, again
 * until nothing is left. When few weights are left, the rest becomes a program of its own, cheap enough to be tried
 * several times. Ends when what is left is proven to need too many bins. The master must stand at its optimum for the
 * whole demand; the dive leaves it changed.
 *
 * @param counts bins that may be used, by kind
 * @param noise how far chance may reorder the choices (0 for none)
 * @param settled what was settled before, for whole plans to be offered
 * @returns the plan for the model's demand, or undefined
 */
export function* dive(
  master: Master,
  counts: readonly number[],
  noise: number,
  pace: number,
  hold: number,
  settled: readonly FillCount[],
  tools: DiveTools,
): Generator<void, FillCount[] | undefined> {
  const { model, simplex } = master;
  const { work, random } = tools;
  const left = Int32Array.from(model.demands);
  const available = [...counts];
  const plan: FillCount[] = [];
  const order = mainLast(model);

  const settle = (place: number, amount: number): void => {
    const fill = master.fills[simplex.basis[place]!]!;
    const count = Math.min(amount, available[fill.bin]!);
    if (count < 1) return;
    simplex.settle(place, count);
    available[fill.bin]! -= takeRepeated(fill, count, left, plan);
  };

  for (let held = hold; ; held = 0) {
    for (let place = 0; place < simplex.rows; place++) {
      if (simplex.basis[place]! < 0) continue;
      const whole = Math.floor(simplex.x[place]! + 1e-4 - held * random());
      if (whole >= 1) settle(place, whole);
    }
    const rest = bestFit(model, left, [Infinity, ...available.slice(1)], order, work);
    tools.offer([...settled, ...plan, ...rest]);
    const mains = rest.reduce((sum, { fill, count }) => sum + (fill.bin === 0 ? count : 0), 0);
    if (mains <= available[0]!) return [...plan, ...rest];
    if (work.over()) return undefined;

    const alive = left.reduce((sum, count) => (count > 0 ? sum + 1 : sum), 0);
    if (alive <= SHRINK * model.weights.length && alive < model.weights.length - 4) {
      const deeper = yield* packRest(model, left, available, master.fills, [...settled, ...plan], tools);
      return deeper && [...plan, ...deeper];
    }
    const places = fractions(master, noise, pace, random);
    if (places.length === 0) return undefined;
    for (const place of places) settle(place, 1);
    const aim = available[0]!;
    if (aim < 0 || !simplex.dual()) return undefined;
    const { end } = yield* generate(master, left, available, { enough: aim, most: aim }, work);
    if (end === "hopeless" || end === "stopped" || simplex.value() > aim + BIN_TOLERANCE) return undefined;
  }
}

/**
 * Makes what is left a program of its own and dives from there a few times.
 *
 * @param left pieces left to place, by item of the model
 * @param available bins that may be used, by kind
 * @param known fills that may be of use as columns
 * @param settled what was settled before, for whole plans to be offered
 */
export function* packRest(
  outer: Model,
  left: Int32Array,
  available: readonly number[],
  known: readonly BinFill[],
  settled: readonly FillCount[],
  tools: DiveTools,
): Generator<void, FillCount[] | undefined> {
  const { random, work } = tools;
  const { model, outward, inward } = restOf(outer, left);
  const master = new Master(model, work, random);
  const proper = known.flatMap((fill) => inward(fill) ?? []).map((fill) => ({ fill, count: 1 }));
  master.start([proper], available, random, known.length > 0 ? 0 : undefined);
  const aim = available[0]!;
  const { end } = yield* generate(master, model.demands, available, { enough: aim, most: aim }, work);
  if (end === "hopeless" || end === "stopped" || master.simplex.value() > aim + BIN_TOLERANCE) return undefined;
  const inner: DiveTools = { ...tools, offer: (plan) => tools.offer([...settled, ...outward(plan)]) };
  const root = master.simplex.save();
  for (let n = 0; n < TRIES && !work.over(); n++) {
    if (n > 0) master.simplex.restore(root);
    const plan = yield* dive(master, available, n === 0 ? 0 : 0.4, PACES[n]!, n, [], inner);
    if (plan) return outward(plan);
  }
  return undefined;
}

/**
 * The plan that a linear program cut short comes to: its whole parts, its largest fractions as far as all their pieces
 * are still wanted, and best fit for what is left.
 *
 * @param counts bins that may be used, by kind; of the main one as many as it takes
 */
export function roundedOff({ model, simplex, fills }: Master, counts: readonly number[], work: Work): FillCount[] {
  const left = Int32Array.from(model.demands);
  const available = [Infinity, ...counts.slice(1)];
  const plan: FillCount[] = [];
  const places = [...simplex.basis.keys()].filter((place) => simplex.basis[place]! >= 0 && simplex.x[place]! > 0.4);
  const take = (place: number, amount: number): void => {
    const fill = fills[simplex.basis[place]!]!;
    const count = Math.min(amount, available[fill.bin]!);
    if (count > 0) available[fill.bin]! -= takeRepeated(fill, count, left, plan);
  };
  for (const place of places) take(place, Math.floor(simplex.x[place]! + 1e-4));
  const part = (place: number): number => simplex.x[place]! % 1;
  for (const place of places.sort((a, b) => part(b) - part(a) || a - b)) {
    const { items, copies } = fills[simplex.basis[place]!]!;
    if (part(place) > HALF && items.every((item, k) => left[item]! >= copies[k]!)) take(place, 1);
  }
  work.add(10 * simplex.rows);
  return [...plan, ...bestFit(model, left, available, mainLast(model), work)];
}

/** Takes up to `count` such fills, trimmed as pieces run out; answers how many bins that took. */
function takeRepeated(fill: BinFill, count: number, left: Int32Array, plan: FillCount[]): number {
  let bins = 0;
  while (bins < count) {
    const trimmed = trimFill(fill, left);
    if (!trimmed) break;
    const repeats = trimmed.items.map((item, k) => Math.floor(left[item]! / trimmed.copies[k]!));
    const some = Math.min(count - bins, ...repeats);
    takeFill(trimmed, some, left);
    plan.push({ fill: trimmed, count: some });
    bins += some;
  }
  return bins;
}

/** Basis places of the fractions to round up next, largest first. */
function fractions(master: Master, noise: number, pace: number, random: () => number): number[] {
  const { simplex } = master;
  const found: { place: number; score: number }[] = [];
  let sum = 0;
  for (let place = 0; place < simplex.rows; place++) {
    const x = simplex.x[place]!;
    if (simplex.basis[place]! < 0 || x < 1e-4) continue;
    sum += x;
    found.push({ place, score: x + noise * random() });
  }
  found.sort((a, b) => b.score - a.score || a.place - b.place);
  return found.slice(0, Math.max(1, Math.floor(sum / pace))).map(({ place }) => place);
}
