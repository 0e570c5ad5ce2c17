/** Things whose rooms meet, against looking at every two of them. */
import fc from "fast-check";
import { boxPairs, roomsMeet, type Room3 } from "../../src/geometry/boxPairs";

const rooms = fc
  .tuple(...[0, 0, 0].map(() => fc.tuple(fc.integer({ min: -40, max: 40 }), fc.integer({ min: 0, max: 30 }))))
  .map((sides): Room3 => ({
    low: sides.map(([low]) => low) as unknown as Room3["low"],
    high: sides.map(([low, wide]) => low + wide) as unknown as Room3["high"],
  }));

test("finds every two that meet, once, and no others", () => {
  fc.assert(
    fc.property(fc.array(fc.array(rooms, { minLength: 1, maxLength: 3 }), { maxLength: 12 }), (things) => {
      const wanted = things.flatMap((own, one) =>
        things.flatMap((against, other) =>
          one < other && own.some((room) => against.some((beside) => roomsMeet(room, beside)))
            ? [`${one} ${other}`]
            : [],
        ),
      );
      expect([...boxPairs(things)].map((pair) => pair.join(" ")).sort()).toEqual(wanted.sort());
    }),
    { numRuns: 200, seed: 3 },
  );
});
