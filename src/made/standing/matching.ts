/**
 * Gives things to places so that the worth is greatest: there are so many of each thing, each place takes so many, and an
 * edge says what one thing is worth there. Whole numbers throughout, so that nothing is lost to rounding.
 */
export interface Edge {
  readonly thing: number;
  readonly place: number;
  /** Above 0. */
  readonly worth: number;
}

export interface Matching {
  /** How many go along each edge. */
  readonly given: readonly number[];
  readonly worth: number;
  /** Prices that prove it: what one of each thing, and one more of each place, is worth at the most. */
  readonly thingPrices: readonly number[];
  readonly placePrices: readonly number[];
}

/**
 * The matching of greatest worth, by successive best paths (Bellman-Ford on the residual edges): each round gives along
 * the path that gains most, until none gains.
 *
 * @param supply and @param demand how many of each thing and place, 1 or more
 */
export function bestMatching(supply: readonly number[], demand: readonly number[], edges: readonly Edge[]): Matching {
  const given = edges.map(() => 0);
  const left = [...supply];
  const open = [...demand];
  for (;;) {
    const start = { things: left.map((count) => (count > 0 ? 0 : -Infinity)), places: open.map(() => -Infinity) };
    const reached = bestGains(start, edges, given);
    const { places } = reached;
    const best = open.reduce((at, count, place) => (count > 0 && places[place]! > (places[at] ?? 0) ? place : at), -1);
    if (best < 0) break;
    give(best, reached, edges, given, left, open);
  }
  const worth = sum(edges.map((edge, index) => edge.worth * given[index]!));
  return { given, worth, ...prices(demand, edges, { given, left, open }) };
}

/** The best gain that leads to each thing and place; and by which edge it was reached, −1 for where it starts. */
interface Reached {
  readonly things: readonly number[];
  readonly places: readonly number[];
  readonly toThing: readonly number[];
  readonly toPlace: readonly number[];
}

/** Best gains from a start: along an edge its worth is won; where some were given along it, it can be given back. */
function bestGains(
  start: { readonly things: readonly number[]; readonly places: readonly number[] },
  edges: readonly Edge[],
  given: readonly number[],
): Reached {
  const [things, places] = [[...start.things], [...start.places]];
  const [toThing, toPlace] = [things.map(() => -1), places.map(() => -1)];
  for (let changed = true; changed;) {
    changed = false;
    edges.forEach(({ thing, place, worth }, index) => {
      if (things[thing]! + worth > places[place]!) {
        places[place] = things[thing]! + worth;
        toPlace[place] = index;
        changed = true;
      }
      if (given[index]! > 0 && places[place]! - worth > things[thing]!) {
        things[thing] = places[place]! - worth;
        toThing[thing] = index;
        changed = true;
      }
    });
  }
  return { things, places, toThing, toPlace };
}

/** Gives along the path that leads to a place as many as all its edges, its source and the place can take. */
function give(
  to: number,
  { toThing, toPlace }: Reached,
  edges: readonly Edge[],
  given: number[],
  left: number[],
  open: number[],
): void {
  const path: { edge: number; sign: 1 | -1 }[] = [];
  let place = to;
  let source = -1;
  while (source < 0) {
    const edge = toPlace[place]!;
    path.push({ edge, sign: 1 });
    const { thing } = edges[edge]!;
    const before = toThing[thing]!;
    if (before < 0) source = thing;
    else {
      path.push({ edge: before, sign: -1 });
      place = edges[before]!.place;
    }
  }
  const returns = path.filter(({ sign }) => sign < 0).map(({ edge }) => given[edge]!);
  const count = Math.min(left[source]!, open[to]!, ...returns);
  for (const { edge, sign } of path) given[edge] = given[edge]! + sign * count;
  left[source] = left[source]! - count;
  open[to] = open[to]! - count;
}

/**
 * Prices of the end: the potentials of the residual network, whose source and sink are both worth 0. A thing that was used
 * up costs what its places would lose without it, a place that is full what one more there would gain.
 */
function prices(
  demand: readonly number[],
  edges: readonly Edge[],
  { given, left, open }: { given: readonly number[]; left: readonly number[]; open: readonly number[] },
): Pick<Matching, "thingPrices" | "placePrices"> {
  const start = {
    things: left.map((count) => (count > 0 ? 0 : -Infinity)),
    places: open.map((count, place) => (count < demand[place]! ? 0 : -Infinity)),
  };
  const { things, places } = bestGains(start, edges, given);
  return {
    thingPrices: things.map((gain) => (gain === -Infinity ? 0 : -gain)),
    placePrices: places.map((gain) => Math.max(0, gain)),
  };
}

/**
 * True when the prices prove that no matching is worth more: none is below 0, each edge is worth no more than its two
 * prices, and all that could be given and taken comes, at these prices, to just the worth that was reached.
 */
export function isProven(
  supply: readonly number[],
  demand: readonly number[],
  edges: readonly Edge[],
  { given, worth, thingPrices, placePrices }: Matching,
): boolean {
  const goes = (of: "thing" | "place", index: number) =>
    sum(edges.map((edge, place) => (edge[of] === index ? given[place]! : 0)));
  const within =
    given.every((count) => Number.isInteger(count) && count >= 0) &&
    supply.every((count, thing) => goes("thing", thing) <= count) &&
    demand.every((count, place) => goes("place", place) <= count);
  const priced =
    [...thingPrices, ...placePrices].every((price) => price >= 0) &&
    edges.every((edge) => edge.worth <= thingPrices[edge.thing]! + placePrices[edge.place]!);
  const most =
    sum(supply.map((count, thing) => count * thingPrices[thing]!)) +
    sum(demand.map((count, place) => count * placePrices[place]!));
  return within && priced && most === worth && worth === sum(edges.map((edge, index) => edge.worth * given[index]!));
}

const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);
