/** The benchmark's made-up runs. */
export const { generatedRuns } = jest.requireActual<{ generatedRuns(count: number): (string | number)[][] }>(
  "../../../tools/generatedRuns.cjs",
);
