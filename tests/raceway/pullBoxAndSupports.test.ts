import { InputError, NotListedError } from "../../src/units/errors";
import { readEntries, readPullKind } from "../../src/raceway/code/pullBox";
import { readSupportedRun, supportRule } from "../../src/raceway/code/supports";

test("entries are read row by row; empty cells and rows are passed over", () => {
  expect(
    readEntries([
      ["2", "", 1.5],
      [null, null, null],
      ["", "3/4", ""],
    ]),
  ).toEqual([["2", "1-1/2"], ["3/4"]]);
  expect(readEntries("2-1/2")).toEqual([["2-1/2"]]);
});

test.each([
  [[["", null]], "entries must hold at least one trade size; all cells are empty."],
  [[["2", "7"]], /^entries row 1, column 2 must be 1\/2, .*; got "7"\.$/],
  [[["2"], [46024]], /^entries row 2, column 1 must be a trade size; got 46024, a date/],
  [[["7"]], /^entries must be 1\/2, .*; got "7"\.$/],
])("entries %j are refused", (value, message) => {
  expect(() => readEntries(value)).toThrow(InputError);
  expect(() => readEntries(value)).toThrow(message);
});

test.each([
  [null, "straight"],
  ["", "straight"],
  ["Straight", "straight"],
  ["angle", "angle"],
  ["U", "angle"],
  ["u-pull", "angle"],
  ["splice", "angle"],
  ["between", "between"],
])("pull %p is reckoned as %s", (value, kind) => {
  expect(readPullKind(value)).toBe(kind);
});

test.each(["diagonal", 8, "constructor"])("pull %p is refused", (value) => {
  expect(() => readPullKind(value)).toThrow(/^pull must be straight, angle, U, splice or between; got /);
});

test("only threaded conduit has the spacing of straight threaded runs", () => {
  expect([readSupportedRun(null), readSupportedRun("any"), readSupportedRun(" Straight ")]).toEqual([
    "any",
    "any",
    "straight",
  ]);
  expect(() => readSupportedRun("bent")).toThrow(new InputError('run must be any or straight; got "bent".'));
  expect(() => supportRule("EMT", "1/2", 2023, "straight")).toThrow(
    new InputError('run must be "any" for EMT: only IMC and RMC have threaded couplings; got "straight".'),
  );
  expect(() => supportRule("IMC", "6", 2023)).toThrow(NotListedError);
});

test("a support rule tells its numbers", () => {
  expect(supportRule("PVC 40", "1-1/4", 2020).text).toBe(
    "A strap or support at most 3 ft from each end of the run, and others of this size at most 5 ft apart.",
  );
  expect(supportRule("EMT", "1", 2023).text).toBe(
    "A strap or support at most 3 ft from each end of the run, and others at most 10 ft apart.",
  );
  expect(supportRule("RMC", "2", 2023, "straight").text).toContain("at most 16 ft apart");
});
