/** Random Runs ranges for properties: buildable runs, some twins, some that cannot be read. */
import fc from "fast-check";
import { runsRange, type RunCells } from "./tables";

const leg = fc.integer({ min: 30, max: 200 });
const route = fc.oneof(
  leg.map((a) => `east ${a}`),
  fc.tuple(leg, leg).map(([a, b]) => `up ${a}, east ${b}`),
  fc.tuple(leg, leg, leg).map(([a, b, c]) => `up ${a}, east ${b}, box, north ${c}`),
  fc.tuple(leg, leg).map(([a, b]) => `east ${a}, offset 6 up at 30, ahead ${b}`),
  fc.constant("up and away"),
);
const raceway = fc.constantFrom<[string, string]>(
  ["EMT", "1/2"],
  ["EMT", "3/4"],
  ["RMC", "1"],
  ["IMC", "3/4"],
  ["PVC 40", "1"],
);
const name = fc.constantFrom("", "JB-1", "JB-2", "JB-10", "Panel A", "open");

export const randomRun: fc.Arbitrary<RunCells> = fc
  .record({
    route,
    raceway,
    from: name,
    to: name,
    quantity: fc.integer({ min: 1, max: 4 }),
    area: fc.constantFrom("North", "South", "Area 2", "Area 10"),
    conductors: fc.constantFrom("", "3 #12 THHN", "3 #10 THHN, 1 #12 THHN"),
  })
  .map((cells) => ({
    Run: "R",
    Area: cells.area,
    Raceway: cells.raceway[0],
    Size: cells.raceway[1],
    Route: cells.route,
    From: cells.from,
    To: cells.to,
    Quantity: cells.quantity,
    Conductors: cells.conductors,
  }));

/** Runs with a name each, and the same in another order. */
export const runsAndShuffled = fc
  .array(randomRun, { minLength: 1, maxLength: 12 })
  .map((runs) => runs.map((run, index) => ({ ...run, Run: `R${index + 1}` })))
  .chain((runs) => fc.tuple(fc.constant(runs), fc.shuffledSubarray(runs, { minLength: runs.length })))
  .map(([runs, shuffled]) => [runsRange(...runs), runsRange(...shuffled)] as const);
