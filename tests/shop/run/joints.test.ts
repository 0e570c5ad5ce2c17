/** Where couplings stand: not inside an offset or saddle where as many pieces keep it whole; or where the row says. [in] */
import fc from "fast-check";
import { jobSchedule } from "../../../functions/job/jobs";
import { buildRun } from "../../../src/shop/run/buildRun";
import { runPieces, type BuiltRun } from "../../../src/shop/run/builtRun";
import { isUserError } from "../../../src/units/errors";
import { writeRoute } from "../../../src/route/text/writeRoute";
import { HALF_EMT, runOf } from "../../support/demoShoe";
import { randomRoute } from "../../support/randomRoutes";

/** Couplings with bends of one offset or saddle on both sides. */
const parted = (built: BuiltRun): number =>
  built.pulls.reduce((sum, { pieces }) => {
    const groups = pieces.map(({ bends }) => [bends[0]?.corner.group, bends.at(-1)?.corner.group]);
    return (
      sum +
      groups.filter(([first], index) => index > 0 && first !== undefined && first === groups[index - 1]![1]).length
    );
  }, 0);

const cuts = (built: BuiltRun): number[] => runPieces(built).map(({ cutLength }) => Number(cutLength.toFixed(4)));

test("an offset that a full stick would part stays whole: the coupling stands before it", () => {
  // The offset's bends lie at 113 and 125 in.; a full stick ends at 120, between them.
  const built = buildRun(runOf("east 114, offset 6 up at 30, ahead 60"), HALF_EMT);
  expect(parted(built)).toBe(0);
  expect(cuts(built)).toHaveLength(2);
  expect(cuts(built)[0]!).toBeLessThan(110);
});

test("a kick and its return stay whole, too", () => {
  const built = buildRun(runOf("east 100, bend 20 up, ahead 30, bend 20 east, ahead 70"), HALF_EMT);
  const bendsOn = built.pulls[0]!.pieces.map(({ bends }) => bends.length);
  expect(bendsOn.filter((count) => count > 0)).toEqual([2]);
});

test("where an offset cannot stay whole without a piece more, the fewest pieces part it", () => {
  // 40 of straight cannot reach past it: an offset of 60 at 30° is 120 long itself.
  const built = buildRun(runOf("east 60, offset 60 up at 30, ahead 60"), HALF_EMT);
  expect(cuts(built)).toHaveLength(2);
  expect(parted(built)).toBe(1);
});

test("random runs: no group is parted where as many pieces keep it whole", () => {
  let [several, whole] = [0, 0];
  fc.assert(
    fc.property(randomRoute, (steps) => {
      let built: BuiltRun;
      try {
        built = buildRun(runOf(writeRoute(steps)), HALF_EMT);
      } catch (error) {
        if (isUserError(error)) return;
        throw error;
      }
      if (runPieces(built).length < 2) return;
      several += 1;
      if (parted(built) === 0) whole += 1;
    }),
    { numRuns: 400, seed: 188 },
  );
  expect(several).toBeGreaterThan(50);
  // Before couplings kept out of offsets, four runs in five had one parted.
  expect(whole / several).toBeGreaterThan(0.9);
});

const table = (joints: unknown) =>
  jobSchedule([
    ["Run", "Raceway", "Size", "Route", "Joints"],
    ["A-1", "EMT", "1/2", "east 114, offset 6 up at 30, ahead 60", joints],
  ]);
const cutsOf = (joints: unknown) => [...new Set(table(joints).slice(1).map((row) => Number(Number(row[2]).toFixed(3))))]; // prettier-ignore

test("Joints says where a run is coupled, as a number or as text with several places", () => {
  expect(cutsOf(70)[0]).toBe(70);
  expect(cutsOf(`5' 10", 8'`).slice(0, 2)).toEqual([70, 26]);
});

test.each([
  [118, /^Joints: 9' 10" stands in a bend or too near to one or to an end for a coupling; the nearest place is from /],
  [50, /^Joints: the piece from 4' 2" to 15' .* is 13\d\.\d+ in\. long; a stick gives 120 in\.$/],
  [`5' 10", 40'`, /^Joints: 40' 0" is past the run's end at 15' /],
  ["beside the door", /^Joints must be a length/],
])("Joints of %p are refused by name", (joints, words) => {
  const [row] = table(joints).slice(1);
  expect(row?.[4]).toBe("not built");
  expect(row?.[12]).toMatch(words);
});
