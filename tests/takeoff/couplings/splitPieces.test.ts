/** One stick emptied into the room of others, by hand: a cut takes 1, no part is shorter than 12. */
import { Rack, type Part } from "../../../src/takeoff/couplings/rack";
import { emptyStick, type SplitPiece } from "../../../src/takeoff/couplings/splitPieces";

const piece = (length: number, more: Partial<SplitPiece> = {}): SplitPiece => ({
  ...{ length, copies: 1, coupling: 1, places: [{ from: 0, to: length }] },
  ...more,
});
const whole = (pieces: readonly SplitPiece[], number: number): Part => ({
  ...{ piece: number, from: 0, to: pieces[number]!.length },
});
/** Empties the first stick, which holds the first piece. */
const empty = (pieces: SplitPiece[], room: number[], most = 9, others: Part[] = []) =>
  emptyStick(Rack.of([[whole(pieces, 0)], others, []], [0, ...room]), 0, most, {
    pieces,
    more: 1,
    shortest: 12,
    budget: { looks: 100 },
  });
/** What the other two sticks may still hold, and hold. */
const rooms = ({ rack }: { rack: Rack }) => [1, 2].map((stick) => rack.room(stick));
const held = ({ rack }: { rack: Rack }) => [1, 2].flatMap((stick) => rack.held(stick));

test("a piece that fits whole is not parted", () => {
  const found = empty([piece(40)], [30, 41])!;
  expect(found).toMatchObject({ splits: [], cost: 0 });
  expect(rooms(found)).toEqual([30, 0]);
});

test("a piece is parted so that both ends fit with their cuts, in whichever order", () => {
  // 40 into rooms of 31 and 12 does not go: 30 and 11 are too little. Into 31 and 13 it does: 28 and 12.
  expect(empty([piece(40)], [31, 12])).toBeUndefined();
  const found = empty([piece(40)], [31, 13])!;
  expect(found).toMatchObject({ splits: [{ piece: 0 }], cost: 1 });
  expect(rooms(found).sort()).toEqual([0, 2]);
  expect(held(found).map(({ from, to }) => to - from).sort()).toEqual([12, 28]); // prettier-ignore
});

test("couplings stand where they may and nowhere else", () => {
  expect(empty([piece(40, { places: [{ from: 20, to: 20 }] })], [31, 13])).toBeUndefined();
  expect(empty([piece(40, { places: [{ from: 20, to: 20 }] })], [21, 21])!.splits).toEqual([{ piece: 0, at: 20 }]);
  expect(empty([piece(40, { places: [] })], [21, 21])).toBeUndefined();
});

test("every copy of a piece is parted, where it lies too: that costs a coupling and takes one cut more there", () => {
  const pieces = [piece(40, { copies: 2 })];
  const found = empty(pieces, [22, 21], 9, [whole(pieces, 0)])!;
  expect(found.cost).toBe(2);
  expect(rooms(found)).toEqual([0, 0]);
  expect(held(found)).toHaveLength(4);
  expect(empty(pieces, [21, 21], 9, [whole(pieces, 0)])).toBeUndefined();
});

test("couplings that cost as much as they may save are too dear", () => {
  expect(empty([piece(40)], [31, 13], 1)).toBeUndefined();
  expect(empty([piece(40, { coupling: 0.9 })], [31, 13], 1)).toBeDefined();
});

test("no more is looked at than was allowed", () => {
  const pieces = [piece(40)];
  const rack = Rack.of([[whole(pieces, 0)], [], []], [0, 31, 13]);
  const emptied = (looks: number) => emptyStick(rack, 0, 9, { pieces, more: 1, shortest: 12, budget: { looks } });
  expect(emptied(100)).toBeDefined();
  expect(emptied(1)).toBeUndefined();
});

test("a stick that would need more couplings than it is worth is left at once", () => {
  // 40 into four rooms of 13: a cut in each, so 12 of conduit, hence four parts and three couplings.
  const pieces = [piece(40)];
  const rack = Rack.of([[whole(pieces, 0)], [], [], [], []], [0, 13, 13, 13, 13]);
  const budget = { looks: 100 };
  expect(emptyStick(rack, 0, 3, { pieces, more: 1, shortest: 12, budget })).toBeUndefined();
  expect(budget.looks).toBe(99);
});

test("a piece is parted once: a run joined at every other foot is no run", () => {
  // 40 into rooms of 15, 15 and 14 would take two couplings; into 15 and 27 it takes one.
  const pieces = [piece(40)];
  const emptied = (rooms: number[]) =>
    emptyStick(Rack.of([[whole(pieces, 0)], ...rooms.map(() => [])], [0, ...rooms]), 0, 9, {
      ...{ pieces, more: 1, shortest: 12, budget: { looks: 100 } },
    });
  expect(emptied([15, 15, 14])).toBeUndefined();
  expect(emptied([15, 27])!.splits).toHaveLength(1);
});
