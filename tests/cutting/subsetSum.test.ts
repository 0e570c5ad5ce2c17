import fc from "fast-check";
import { greatestSums, SubsetSum } from "../../src/cutting/model/subsetSum";
import { Work } from "../../src/cutting/model/work";

/** Every sum that some of the weights add up to, one choice after another. */
function allSums(weights: readonly number[]): number[] {
  return weights.reduce((sums, weight) => [...sums, ...sums.map((sum) => sum + weight)], [0]);
}
const most = (weights: readonly number[], room: number): number =>
  Math.max(...allSums(weights).filter((sum) => sum <= room));

const someWeights = fc.array(fc.integer({ min: 1, max: 150 }), { maxLength: 9 });
const someRoom = fc.integer({ min: 0, max: 400 });

describe("sums of some of the weights", () => {
  it("come as close to the room as trying every choice does, and the choice adds up", () => {
    const sums = new SubsetSum(new Work());
    fc.assert(
      fc.property(someWeights, someRoom, (weights, room) => {
        const { sum, chosen } = sums.fullest(weights, room);
        expect(sum).toBe(most(weights, room));
        expect(weights.reduce((total, weight, k) => total + (chosen[k] ? weight : 0), 0)).toBe(sum);
      }),
      { numRuns: 300 },
    );
  });

  it("fill each kind of bin as full as trying every choice does", () => {
    fc.assert(
      fc.property(someWeights, fc.array(someRoom, { minLength: 1, maxLength: 3 }), (list, rooms) => {
        const weights = [...new Set(list)].sort((a, b) => b - a);
        const model = {
          weights: Int32Array.from(weights),
          demands: Int32Array.from(weights, (weight) => list.filter((other) => other === weight).length),
          bins: rooms.map((capacity) => ({ capacity, cost: 1, limit: Infinity })),
        };
        expect(greatestSums(model, new Work())).toEqual(rooms.map((room) => most(list, room)));
      }),
      { numRuns: 300 },
    );
  });
});
