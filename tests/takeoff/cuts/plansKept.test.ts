/** One plan for each lot, whichever function asks for it, made anew only when something of its lot changes. */
import { pack } from "../../../src/cutting/filling/pack";
import { jobCuts } from "../../../src/takeoff/reports/jobCuts";
import { changes } from "../../../src/takeoff/reports/changes";
import { takeoff } from "../../../src/takeoff/lines/takeoff";
import { runsRange } from "../tables";

jest.mock("../../../src/cutting/filling/pack", () => {
  const actual = jest.requireActual<{ pack: typeof pack }>("../../../src/cutting/filling/pack");
  return { pack: jest.fn(actual.pack) };
});
const packed = jest.mocked(pack);

/** How many lots are planned while something is asked. */
function plannedBy(ask: () => unknown): number {
  const before = packed.mock.calls.length;
  ask();
  return packed.mock.calls.length - before;
}

const SIZES = ["1/2", "3/4", "1"];
/** Three lots of runs; `changed` is the length of the last one of size 1. */
const runs = (changed = 77) =>
  runsRange(
    ...SIZES.flatMap((Size, lot) =>
      [31, 47, 59, 73, 88, lot === 2 ? changed : 77].map((inches, n) => {
        return { Run: `${Size} ${n}`, Size, Route: `east ${inches + lot}`, Quantity: 2 };
      }),
    ),
  );
const stock = [
  ["Raceway", "Size", "Length", "On hand", "Price"],
  ...SIZES.flatMap((size) => [
    ["EMT", size, 120, null, 9],
    ["EMT", size, 240, null, 17],
    ["EMT", size, 60, 1, null],
  ]),
];

test("cuts, take-off and changes from the same stock share their plans; an edit plans its own lot again", () => {
  expect(plannedBy(() => jobCuts(runs(), { stock }))).toBe(3);
  expect(plannedBy(() => takeoff(runs(), { stock }))).toBe(0);
  expect(plannedBy(() => jobCuts(runs(78), { stock }))).toBe(1);
  expect(plannedBy(() => changes(runs(), runs(78), { stock }))).toBe(0);
});

test("without stock the take-off counts sticks that the cutting plan goes on from", () => {
  expect(plannedBy(() => takeoff(runs()))).toBe(3);
  expect(plannedBy(() => jobCuts(runs()))).toBe(0);
  expect(plannedBy(() => takeoff(runs(78)))).toBe(1);
});
