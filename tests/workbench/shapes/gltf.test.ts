/** glTF checked by the validator of its makers (Khronos glTF-Validator, Apache-2.0). */
import { buildJob, builtRows } from "../../../src/shop/job/job";
import { demoRuns } from "../../../workbench/demo/ferryTerminal";
import { runsGlb } from "../../../workbench/shapes";

interface Report {
  issues: { numErrors: number; numWarnings: number; messages: { code: string }[] };
  info: { drawCallCount: number; totalTriangleCount: number };
}
// It has no types of its own.
const { validateBytes } = jest.requireActual<{ validateBytes(bytes: Uint8Array): Promise<Report> }>("gltf-validator");

const runsOf = (rows: readonly (readonly unknown[])[]) =>
  builtRows(buildJob({ runs: rows as unknown[][] })).map(({ built }) => built);

interface Gltf {
  nodes: { name: string; translation: number[] }[];
  accessors: { type: string; min?: number[]; max?: number[] }[];
}

const jsonOf = (file: Uint8Array): Gltf => {
  const length = new DataView(file.buffer).getUint32(12, true);
  return JSON.parse(new TextDecoder().decode(file.subarray(20, 20 + length))) as Gltf;
};

test("the whole demo is a valid file, a node for each run and a tube for each pull", async () => {
  const runs = runsOf(demoRuns);
  const file = runsGlb(runs);
  const { issues, info } = await validateBytes(file);
  expect(issues).toMatchObject({ numErrors: 0, numWarnings: 0, messages: [] });
  expect(info.drawCallCount).toBe(runs.reduce((sum, { pulls }) => sum + pulls.length, 0));
  expect(jsonOf(file).nodes.map(({ name }) => name)).toEqual(runs.map(({ run }) => run.name));
});

test("the validator finds what is wrong: a byte of an index changed", async () => {
  const file = runsGlb(
    runsOf([
      ["Run", "Raceway", "Size", "Route"],
      ["A", "EMT", "1/2", "up 10, east 96"],
    ]),
  );
  file[file.length - 1] = 9;
  expect((await validateBytes(file)).issues.numErrors).toBeGreaterThan(0);
});

test("meters with y up, by hand: 10 in. up and 96 in. north of a Start 100 in. east and 20 in. north", () => {
  const runs = runsOf([
    ["Run", "Raceway", "Size", "Route", "Start"],
    ["A", "EMT", "1/2", "up 10, north 96", "100 20 3"],
  ]);
  const { nodes, accessors } = jsonOf(runsGlb(runs));
  nodes[0]!.translation.forEach((value, axis) => expect(value).toBeCloseTo([2.54, 0.0762, -0.508][axis]!, 9));
  const { min, max } = accessors[0]!;
  // Half of 0.706 in. beside and above the centerline: 0.0089662 m.
  const [across, up, north] = [0.353 * 0.0254, 10.353 * 0.0254, -96 * 0.0254];
  expect([min![0], max![0]]).toEqual([expect.closeTo(-across, 6), expect.closeTo(across, 6)]);
  expect([min![1], min![2]]).toEqual([0, expect.closeTo(north, 6)]);
  expect(max![1]).toBeGreaterThan(up - 0.0003);
  expect(max![1]).toBeLessThan(up + 1e-6);
});
