/** The part of the check that is about cases; like verify.ts it shares no code with the solver. */
import type { Branch } from "../model/packing";

/** A proof that takes longer to look through is not accepted. */
const MOST_VISITS = 5e7;

interface Case {
  together: [number, number][];
  apart: [number, number][];
}

/**
 * Do the branches prove that pieces of these weights do not fit into so many sticks? Whatever the plan, two pieces lie on one
 * stick or they do not, so both cases have to be excluded. In a case, no stick leaves more than all of them have to
 * spare; if none that is allowed is worth as much as its share of all prices, they are too few.
 */
export function excludeSticks(weights: readonly number[], room: number, sticks: number, branches: Branch): boolean {
  const spare = weights.reduce((left, weight) => left - weight, sticks * room);
  let visits = 0;
  return spare < 0 || excluded(branches, { together: [], apart: [] });

  function excluded(branch: Branch, given: Case): boolean {
    if ("prices" in branch) return arePriced(branch.prices) && tooFew(branch.prices, given);
    const [one, other] = branch.pieces;
    if (weights[one!] === undefined || weights[other!] === undefined || one === other) return false;
    const two: [number, number] = [one!, other!];
    return (
      excluded(branch.together, { ...given, together: [...given.together, two] }) &&
      excluded(branch.apart, { ...given, apart: [...given.apart, two] })
    );
  }

  function arePriced(prices: readonly number[]): boolean {
    return (
      prices.length === weights.length &&
      prices.every((price) => Number.isSafeInteger(price) && price >= 0) &&
      Number.isSafeInteger(prices.reduce((sum, price) => sum + price, 0))
    );
  }

  function tooFew(prices: readonly number[], { together, apart }: Case): boolean {
    const group = weights.map((_, piece) => piece);
    for (const [one, other] of together) {
      const [from, to] = [group[one]!, group[other]!];
      group.forEach((name, piece) => (group[piece] = name === from ? to : name));
    }
    if (apart.some(([one, other]) => group[one] === group[other])) return true;
    const names = [...new Set(group)];
    const sum = (of: readonly number[], name: number): number =>
      of.reduce((all, value, piece) => (group[piece] === name ? all + value : all), 0);
    const parts = names.map((name) => ({ name, weight: sum(weights, name), worth: sum(prices, name) }));
    if (parts.some(({ weight }) => weight > room)) return true;
    const all = prices.reduce((total, price) => total + price, 0);
    const share = Math.floor((all - 1) / sticks);
    const foes = new Map(names.map((name) => [name, new Set<number>()]));
    for (const [one, other] of apart) {
      foes.get(group[one]!)!.add(group[other]!);
      foes.get(group[other]!)!.add(group[one]!);
    }
    return !anyWorthMore(parts, foes, share);
  }

  /** Is there a stick with no more than the spare left on it that is worth more than `share`? */
  function anyWorthMore(
    parts: readonly { name: number; weight: number; worth: number }[],
    foes: ReadonlyMap<number, ReadonlySet<number>>,
    share: number,
  ): boolean {
    // By parts still to come and room left: the most they can be worth, foes or not, with little enough left over.
    const most = [Float64Array.from({ length: room + 1 }, (_, left) => (left <= spare ? 0 : -Infinity))];
    for (const { weight, worth } of [...parts].reverse()) {
      const before = most.at(-1)!;
      most.push(
        before.map((without, left) => (left < weight ? without : Math.max(without, before[left - weight]! + worth))),
      );
    }
    const laid: number[] = [];
    const search = (next: number, left: number, worth: number): boolean => {
      if (++visits > MOST_VISITS) return true;
      if (worth + most[parts.length - next]![left]! <= share) return false;
      const part = parts[next];
      if (!part) return true;
      const fits = part.weight <= left && !laid.some((name) => foes.get(part.name)!.has(name));
      if (fits) {
        laid.push(part.name);
        if (search(next + 1, left - part.weight, worth + part.worth)) return true;
        laid.pop();
      }
      return search(next + 1, left, worth);
    };
    return search(0, room, 0);
  }
}
