/** One stick emptied into the room of others, by hand: a cut takes 1, no part is shorter than 12. */
import { emptyStick, type Part, type SplitPiece } from "../../../src/takeoff/couplings/splitPieces";

const piece = (length: number, more: Partial<SplitPiece> = {}): SplitPiece => ({
  ...{ length, copies: 1, coupling: 1, places: [{ from: 0, to: length }] },
  ...more,
});
const whole = (pieces: readonly SplitPiece[], number: number): Part => ({
  ...{ piece: number, from: 0, to: pieces[number]!.length },
});
/** Empties the first stick, which holds the first piece. */
const empty = (pieces: SplitPiece[], room: number[], most = 9, others: Part[] = []) =>
  emptyStick({ parts: [[whole(pieces, 0)], others, []], room: [0, ...room] }, 0, most, {
    pieces,
    more: 1,
    shortest: 12,
  });

test("a piece that fits whole is not parted", () => {
  expect(empty([piece(40)], [30, 41])).toMatchObject({ splits: [], cost: 0, rack: { room: [30, 0] } });
});

test("a piece is parted so that both ends fit with their cuts, in whichever order", () => {
  // 40 into rooms of 31 and 12 does not go: 30 and 11 are too little. Into 31 and 13 it does: 28 and 12.
  expect(empty([piece(40)], [31, 12])).toBeUndefined();
  const found = empty([piece(40)], [31, 13])!;
  expect(found).toMatchObject({ splits: [{ piece: 0 }], cost: 1 });
  expect([...found.rack.room].sort()).toEqual([0, 2]);
  expect(found.rack.parts.flat().map(({ from, to }) => to - from).sort()).toEqual([12, 28]); // prettier-ignore
});

test("couplings stand where they may and nowhere else", () => {
  expect(empty([piece(40, { places: [{ from: 20, to: 20 }] })], [31, 13])).toBeUndefined();
  expect(empty([piece(40, { places: [{ from: 20, to: 20 }] })], [21, 21])!.splits).toEqual([{ piece: 0, at: 20 }]);
  expect(empty([piece(40, { places: [] })], [21, 21])).toBeUndefined();
});

test("every copy of a piece is parted, where it lies too: that costs a coupling and takes one cut more there", () => {
  const pieces = [piece(40, { copies: 2 })];
  const found = empty(pieces, [22, 21], 9, [whole(pieces, 0)])!;
  expect(found).toMatchObject({ cost: 2, rack: { room: [0, 0] } });
  expect(found.rack.parts.flat()).toHaveLength(4);
  expect(empty(pieces, [21, 21], 9, [whole(pieces, 0)])).toBeUndefined();
});

test("couplings that cost as much as they may save are too dear", () => {
  expect(empty([piece(40)], [31, 13], 1)).toBeUndefined();
  expect(empty([piece(40, { coupling: 0.9 })], [31, 13], 1)).toBeDefined();
});
