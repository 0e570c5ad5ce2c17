import type { BinFill, FillCount } from "../model/model";
import type { Packing } from "../model/packing";
import type { Canonical } from "../model/kinds";
import type { Certificate, CutPattern, CutPlan, Cuts } from "./plan";
import type { Translated } from "../model/toModel";
import type { RestProof } from "../rests/longestRest";
import type { StopReason } from "../model/work";

/** Turns a packing back into lengths and sums it up. */
export function toPlan(
  request: Canonical,
  { model, kindOf }: Pick<Translated, "model" | "kindOf">,
  packing: Packing,
  ending: { stopped: StopReason; steps: number; rest: RestProof | undefined },
): CutPlan {
  const { lengths, kinds, kerf, minimumOffcut } = request;
  const used = kinds.map(() => 0);
  const patterns = new Map<string, CutPattern>();
  const missing = new Map<number, number>();
  const missingPatterns: CutPlan["missingPatterns"] = [];
  for (const { fill, count } of packing.plan) {
    const cuts: Cuts[] = fill.items.map((item, k) => ({ length: lengths[item]!, count: fill.copies[k]! }));
    cuts.sort((a, b) => b.length - a.length);
    const stock = kindOf[fill.bin]!;
    if (stock < 0) {
      missingPatterns.push({ count, cuts });
      for (const cut of cuts) missing.set(cut.length, (missing.get(cut.length) ?? 0) + count * cut.count);
      continue;
    }
    used[stock]! += count;
    const taken = cuts.reduce((sum, cut) => sum + cut.count * (cut.length + kerf), 0);
    const key = `${stock}:${cuts.map((cut) => `${cut.length}x${cut.count}`).join()}`;
    const pattern = patterns.get(key) ?? { stock, count: 0, cuts, remnant: Math.max(0, kinds[stock]!.length - taken) };
    pattern.count += count;
    patterns.set(key, pattern);
  }
  const lines = [...patterns.values()].sort(
    (a, b) => b.count - a.count || a.stock - b.stock || a.remnant - b.remnant || compareCuts(a.cuts, b.cuts),
  );
  const keep = (pattern: CutPattern): boolean => pattern.remnant > 0 && pattern.remnant >= minimumOffcut;
  const remnants = lines
    .filter(keep)
    .flatMap(({ remnant, count }) => new Array<number>(count).fill(remnant))
    .sort((a, b) => b - a);
  const stockLength = used.reduce((sum, count, k) => sum + count * kinds[k]!.length, 0);
  const pieceLength = lines.reduce(
    (sum, { cuts, count }) => sum + count * cuts.reduce((part, cut) => part + cut.count * cut.length, 0),
    0,
  );
  const waste = stockLength - pieceLength - remnants.reduce((sum, remnant) => sum + remnant, 0);
  const missingSticks = missingPatterns.reduce((sum, { count: some }) => sum + some, 0);
  const missingCost = missingSticks * model.bins[0]!.cost;
  const count = (limited: boolean): number =>
    used.reduce((sum, some, k) => (limited === (kinds[k]!.quantity !== Infinity) ? sum + some : sum), 0);
  return {
    stocks: kinds.map((kind) => ({ ...kind })),
    patterns: lines,
    used,
    sticks: count(false),
    onHand: count(true),
    missing: [...missing].map(([length, some]) => ({ length, count: some })).sort((a, b) => b.length - a.length),
    missingSticks,
    missingPatterns,
    cost: packing.cost - missingCost,
    bound: Math.max(0, packing.bound - missingCost),
    proven: packing.cost === packing.bound,
    longestRemnant: remnants[0] ?? 0,
    longestProven: ending.rest !== undefined,
    remnants,
    stockLength,
    pieceLength,
    waste,
    wasteShare: stockLength > 0 ? waste / stockLength : 0,
    certificate: {
      pairs: pairsOf(packing.pairs, lengths),
      prices: packing.cuts.map((cut) => [...cut.prices]),
      ...(packing.branches && { branches: packing.branches }),
      rest: {
        pairs: pairsOf(ending.rest?.pairs ?? [], lengths),
        prices: (ending.rest?.prices ?? []).map((prices) => [...prices]),
      },
    },
    stopped: ending.stopped,
    steps: ending.steps,
  };
}

const pairsOf = (pairs: readonly FillCount[], lengths: readonly number[]): Certificate["pairs"] =>
  pairs.map(({ fill, count }) => ({ lengths: pairOf(fill, lengths), count }));

function pairOf({ items, copies }: BinFill, lengths: readonly number[]): [number, number] {
  const [first = 0, second = copies[0] === 2 ? first : -1] = items;
  return [lengths[first]!, lengths[second] ?? 0];
}

function compareCuts(a: readonly Cuts[], b: readonly Cuts[]): number {
  for (let k = 0; k < Math.min(a.length, b.length); k++) {
    const order = b[k]!.length - a[k]!.length || b[k]!.count - a[k]!.count;
    if (order !== 0) return order;
  }
  return a.length - b.length;
}
