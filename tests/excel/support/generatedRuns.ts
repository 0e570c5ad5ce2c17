/** The benchmark's made-up runs. */
export const { generatedRuns } = jest.requireActual<{ generatedRuns(count: number): (string | number)[][] }>(
  "../../../tools/bench/generatedRuns.cjs",
);
