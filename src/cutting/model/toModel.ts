import type { Canonical, StockKind } from "./kinds";
import type { Bin, Model } from "./model";

/** The sticks behind the bins: a bin with weight w in it leaves a rest of length - step x w. */
export interface Sticks {
  /** By bin; 0 for the stick that is missing. */
  lengths: number[];
  step: number;
}

/** The request in the solver's terms. */
export interface Translated extends Sticks {
  model: Model;
  /** Stock kind of each bin of the model; -1 for the stick that is missing. */
  kindOf: number[];
}

/**
 * Turns lengths into weights and stock kinds into bins. Kinds that can never help are left out. When pieces may be left
 * without a stick (all stocks limited, or a piece fits only those), the main bin stands for a missing stick and costs more
 * than all others together.
 */
export function toModel(request: Canonical): Translated {
  const { lengths, demands, kinds, kerf } = request;
  const weights = lengths.map((length) => length + kerf);
  const useful = kinds.flatMap((kind, k) => (helps(kind, k, kinds) ? [k] : []));
  const main = useful.find((k) => kinds[k]!.quantity === Infinity);
  const covered = main !== undefined && kinds[main]!.length + kerf >= (weights[0] ?? 0);
  const kindOf = covered ? [main, ...useful.filter((k) => k !== main)] : [-1, ...useful];
  const step = weights.reduce(divisor, 0) || 1;
  const pieces = demands.reduce((sum, demand) => sum + demand, 0);
  const dearest = kinds.reduce((most, kind) => Math.max(most, kind.cost), 0);
  const bins = kindOf.map((k): Bin => {
    const kind = kinds[k] ?? missingStick(kinds, dearest * pieces + 1);
    return {
      capacity: Math.floor((kind.length + kerf) / step),
      cost: kind.cost,
      limit: k === kindOf[0] ? Infinity : Math.min(kind.quantity, pieces),
    };
  });
  const model = {
    weights: Int32Array.from(weights, (weight) => weight / step),
    demands: Int32Array.from(demands),
    bins,
  };
  return { model, kindOf, lengths: kindOf.map((k) => kinds[k]?.length ?? 0), step };
}

/** Stands for what could not be placed. */
function missingStick(kinds: readonly StockKind[], cost: number): StockKind {
  return { length: kinds[0]!.length, cost, quantity: Infinity };
}

/** False when another kind is as cheap, at least as long, and there is no end of it. */
function helps(kind: StockKind, place: number, kinds: readonly StockKind[]): boolean {
  return !kinds.some(
    (other, k) =>
      k !== place &&
      other.quantity === Infinity &&
      other.length >= kind.length &&
      other.cost <= kind.cost &&
      (other.length > kind.length || other.cost < kind.cost || kind.quantity !== Infinity || k < place),
  );
}

function divisor(a: number, b: number): number {
  while (b > 0) [a, b] = [b, a % b];
  return a;
}
