/** What remembering is: the same for the same, told apart what differs, bounded. */
import { sameCell, cellsKey } from "../../src/memory/cells";
import { sameList, sameParts } from "../../src/memory/lists";
import { rememberLatest } from "../../src/memory/latest";
import { remember } from "../../src/memory/remember";
import { rememberRows, type CellRow } from "../../src/memory/rows";
import { rememberTable } from "../../src/memory/tables";
import { CellFault } from "../../src/units/cellFault";

test("cells are the same where every reader takes them for the same, and only there", () => {
  const cells = [
    0,
    1,
    "1",
    "",
    " ",
    null,
    undefined,
    true,
    "true",
    NaN,
    new CellFault("#REF!"),
    new CellFault("#N/A"),
    "null",
  ];
  for (const [a, first] of cells.entries()) {
    for (const [b, second] of cells.entries()) {
      expect([first, second, sameCell(first, second)]).toEqual([first, second, a === b]);
      expect([first, second, cellsKey([first]) === cellsKey([second])]).toEqual([first, second, a === b]);
    }
  }
  expect(sameCell(new CellFault("#REF!"), new CellFault("#REF!"))).toBe(true);
});

test("work on the same objects is done once, an error too; trailing arguments count", () => {
  const work = jest.fn((a: { n: number }, b?: object | number | null) => {
    if (a.n < 0) throw new RangeError("below 0");
    return [a.n, b];
  });
  const known = remember(work);
  const [one, less, other] = [{ n: 1 }, { n: -1 }, {}];
  expect(known(one, other)).toBe(known(one, other));
  expect(known(one)).not.toBe(known(one, other));
  expect(known(one, 2)).not.toBe(known(one, 3));
  expect(known({ n: 1 }, other)).not.toBe(known(one, other));
  expect(() => known(less)).toThrow("below 0");
  expect(() => known(less)).toThrow("below 0");
  expect(work).toHaveBeenCalledTimes(6);
});

test("of one first argument the newest outcomes are kept; what must not be kept is not, but what is kept still holds", () => {
  const work = jest.fn((of: object, n: number) => ({ of, n }));
  let keeps = true;
  const known = remember(work, { most: 2, keeps: () => keeps });
  const one = {};
  const first = known(one, 1);
  known(one, 2);
  expect(known(one, 1)).toBe(first);
  known(one, 3);
  expect(known(one, 1)).toBe(first);
  expect(work).toHaveBeenCalledTimes(3);
  known(one, 2);
  expect(work).toHaveBeenCalledTimes(4);
  keeps = false;
  expect(known(one, 2).n).toBe(2);
  known(one, 4);
  known(one, 4);
  expect(work).toHaveBeenCalledTimes(6);
});

test("the same elements in the same order are the same list and the same parts, others are not", () => {
  const [a, b, c] = [{ n: 1 }, { n: 2 }, { n: 1 }];
  const list = sameList([a, b, c]);
  expect(sameList([a, b, c])).toBe(list);
  for (const other of [[a, b], [a, c, b], [b, c], [a, b, { ...c }], []]) {
    expect(sameList(other)).not.toBe(list);
    expect(sameList(other)).toEqual(other);
  }
  const parts = sameParts(list, ({ n }) => String(n));
  expect(parts).toEqual([[a, c], [b]]);
  const later = sameParts([b, a, c, { n: 2 }], ({ n }) => String(n));
  expect(later[0]).toEqual([b, { n: 2 }]);
  expect(later[1]).toBe(parts[0]);
});

const rowsOf = (...cells: unknown[][]): CellRow[] => cells.map((row) => ({ cells: row }));

test("known rows keep their objects when others come, go and move; equal rows have one each", () => {
  const make = jest.fn(({ cells }: CellRow) => ({ cells }));
  const read = rememberRows(make);
  const first = read(rowsOf(["a"], ["b"], ["c"], ["d"]));
  expect(read(rowsOf(["a"], ["x"], ["b"], ["c"], ["d"]))).toEqual([
    ...first.slice(0, 1),
    { cells: ["x"] },
    ...first.slice(1),
  ]);
  expect(make).toHaveBeenCalledTimes(5);
  const sorted = read(rowsOf(["d"], ["c"], ["b"], ["a"]));
  sorted.forEach((row, at) => expect(row).toBe(first[3 - at]));
  const twins = read(rowsOf(["a"], ["a"], ["b"], ["a"]));
  expect(new Set(twins).size).toBe(4);
  expect(read(rowsOf(["a"], ["b"], ["a"], ["a"])).filter((row) => twins.includes(row))).toHaveLength(4);
  expect(make).toHaveBeenCalledTimes(7);
});

test("a table changed in place is read anew; seven tables later the first is forgotten", () => {
  const read = jest.fn((range: unknown) => ({ range: JSON.stringify(range) }));
  const known = rememberTable(read);
  const table = [["Rule"], [1]];
  const before = known(table);
  expect(known([["Rule"], [1], ["", null]])).toBe(before);
  table[1]![0] = 2;
  expect(known(table).range).toBe('[["Rule"],[2]]');
  expect(known([["Rule"], [1]])).toBe(before);
  for (let other = 3; other < 9; other++) known([["Rule"], [other]]);
  expect(known([["Rule"], [1]])).not.toBe(before);
  expect(known(null)).toBe(known(undefined));
});

test("of the latest answers so many are kept, and no error", () => {
  const work = jest.fn((text: string) => {
    if (text === "bad") throw new Error("no");
    return { text };
  });
  const known = rememberLatest(work, 2);
  const a = known("a");
  known("b");
  expect(known("a")).toBe(a);
  known("c");
  expect(known("a")).toBe(a);
  expect(work).toHaveBeenCalledTimes(3);
  known("b");
  expect(work).toHaveBeenCalledTimes(4);
  expect(() => known("bad")).toThrow("no");
  expect(() => known("bad")).toThrow("no");
  expect(work).toHaveBeenCalledTimes(6);
});
