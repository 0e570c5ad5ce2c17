/** Best fit and first fit, as the text-books have them, piece by piece: the solver fills bins that are alike together. */
import fc from "fast-check";
import { bestFit } from "../../src/cutting/greedy/bestFit";
import { binFor, thriftyOrder } from "../../src/cutting/greedy/binOrder";
import { firstFit } from "../../src/cutting/greedy/firstFit";
import { tightFills } from "../../src/cutting/greedy/tightFills";
import type { FillCount, Model } from "../../src/cutting/model/model";
import { NumberSet } from "../../src/cutting/greedy/numberSet";
import { seededRandom } from "../../src/cutting/model/random";
import { Work } from "../../src/cutting/model/work";

const models = fc
  .record({
    demand: fc.dictionary(fc.integer({ min: 1, max: 40 }).map(String), fc.integer({ min: 1, max: 9 }), { minKeys: 1 }),
    others: fc.array(
      fc.record({
        capacity: fc.integer({ min: 5, max: 90 }),
        cost: fc.integer({ min: 0, max: 9 }),
        limit: fc.integer({ min: 1, max: 3 }),
      }),
      { maxLength: 3 },
    ),
  })
  .map(({ demand, others }): Model => {
    const weights = Object.keys(demand)
      .map(Number)
      .sort((a, b) => b - a);
    return {
      weights: Int32Array.from(weights),
      demands: Int32Array.from(weights, (weight) => demand[weight]!),
      bins: [{ capacity: 60, cost: 5, limit: Infinity }, ...others],
    };
  });

/** Each piece, heaviest first, into the bin of those with room that `better` prefers; rooms left, by kind of bin. */
function pieceByPiece(model: Model, better: (room: number, than: number) => boolean): string[] {
  const free = model.bins.map((bin) => bin.limit);
  const open: { bin: number; room: number }[] = [];
  model.weights.forEach((weight, item) => {
    for (let n = 0; n < model.demands[item]!; n++) {
      let chosen: { bin: number; room: number } | undefined;
      for (const bin of open) if (bin.room >= weight && (!chosen || better(bin.room, chosen.room))) chosen = bin;
      if (!chosen) {
        const bin = binFor(model, free, thriftyOrder(model), weight);
        free[bin]!--;
        open.push((chosen = { bin, room: model.bins[bin]!.capacity }));
      }
      chosen.room -= weight;
    }
  });
  return open.map(({ bin, room }) => `${bin}: ${room}`).sort();
}

const roomsOf = ({ weights, bins }: Model, plan: readonly FillCount[]): string[] =>
  plan
    .flatMap(({ fill: { bin, items, copies }, count }) => {
      const weight = items.reduce((sum, item, k) => sum + weights[item]! * copies[k]!, 0);
      return new Array<string>(count).fill(`${bin}: ${bins[bin]!.capacity - weight}`);
    })
    .sort();

function expectWhole({ demands }: Model, plan: readonly FillCount[]): void {
  const placed = demands.map(() => 0);
  for (const { fill, count } of plan) fill.items.forEach((item, k) => (placed[item]! += count * fill.copies[k]!));
  expect(placed).toEqual(demands);
}

describe("greedy plans", () => {
  it("best fit leaves the rooms that it leaves piece by piece", () => {
    fc.assert(
      fc.property(models, (model) => {
        // Where bins of two kinds have equal room, either may be taken: one kind only tells the whole truth.
        const one = { ...model, bins: model.bins.slice(0, 1) };
        const plan = bestFit(one, one.demands, [Infinity], [0], new Work());
        expectWhole(one, plan);
        expect(roomsOf(one, plan)).toEqual(pieceByPiece(one, (room, than) => room < than));
        const limits = model.bins.map((bin) => bin.limit);
        const several = bestFit(model, model.demands, limits, thriftyOrder(model), new Work());
        expectWhole(model, several);
        for (const { fill, count } of several) limits[fill.bin]! -= count;
        expect(Math.min(...limits)).toBeGreaterThanOrEqual(0);
      }),
      { numRuns: 200 },
    );
  });

  it("first fit leaves the rooms that it leaves piece by piece, of every kind of bin", () => {
    fc.assert(
      fc.property(models, (model) => {
        const plan = firstFit(model, new Work());
        expectWhole(model, plan);
        expect(roomsOf(model, plan)).toEqual(pieceByPiece(model, () => false));
      }),
      { numRuns: 200 },
    );
  });

  it("takes as much work as there are kinds of fills, not bins", () => {
    const model: Model = {
      weights: Int32Array.of(7, 5, 3),
      demands: Int32Array.of(30_000, 30_000, 30_000),
      bins: [{ capacity: 20, cost: 1, limit: Infinity }],
    };
    const work = new Work();
    expectWhole(model, bestFit(model, model.demands, [Infinity], [0], work));
    expect(work.spent).toBeLessThan(1000);
  });
});

/** Rooms left by any three pieces with one of `first` as the heaviest, and by two that no third fits beside. */
function roomsByTrial({ weights, demands, bins }: Model, first: number): number[] {
  const rooms: number[] = [];
  const fits = (...pieces: number[]): boolean =>
    pieces.every((item) => pieces.filter((other) => other === item).length <= demands[item]!) &&
    pieces.reduce((sum, item) => sum + weights[item]!, 0) <= bins[0]!.capacity;
  const room = (...pieces: number[]): number => pieces.reduce((left, item) => left - weights[item]!, bins[0]!.capacity);
  for (let second = first; second < weights.length; second++) {
    let alone = fits(first, second);
    weights.forEach((_, third) => {
      if (third < second || !fits(first, second, third)) return;
      alone = false;
      rooms.push(room(first, second, third));
    });
    if (alone) rooms.push(room(first, second));
  }
  return rooms.sort((a, b) => a - b);
}

test("the tightest fills of two and three pieces leave the least room that trying all of them finds", () => {
  fc.assert(
    fc.property(models, (model) => {
      const fills = tightFills(model, seededRandom(1), new Work());
      model.weights.forEach((_, first) => {
        const mine = fills.filter(({ items }) => items[0] === first);
        const rooms = mine.map(({ items, copies }) =>
          items.reduce((room, item, k) => room - copies[k]! * model.weights[item]!, model.bins[0]!.capacity),
        );
        for (const { items, copies } of mine)
          items.forEach((item, k) => expect(copies[k]).toBeLessThanOrEqual(model.demands[item]!));
        expect(Math.min(...rooms)).toBeGreaterThanOrEqual(0);
        expect(rooms.length).toBeLessThanOrEqual(4);
        expect(rooms[0]).toBe(roomsByTrial(model, first)[0]);
      });
    }),
    { numRuns: 300 },
  );
});

test("a set of numbers finds the next one as a search through all of them does", () => {
  const change = fc.record({ number: fc.integer({ min: 0, max: 5000 }), gone: fc.boolean() });
  fc.assert(
    fc.property(fc.array(change, { maxLength: 60 }), fc.array(fc.integer({ min: 0, max: 5100 })), (changes, asked) => {
      const [set, all] = [new NumberSet(5000), new Set<number>()];
      for (const { number, gone } of changes) {
        if (gone) set.remove(number);
        else set.add(number);
        if (gone) all.delete(number);
        else all.add(number);
      }
      for (const least of [...asked, ...all]) {
        const next = [...all].filter((number) => number >= least).sort((a, b) => a - b)[0];
        expect(set.next(least)).toBe(next ?? -1);
      }
    }),
    { numRuns: 300 },
  );
});
