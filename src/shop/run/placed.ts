import type { Path } from "../../geometry/path";
import { add, ORIGIN } from "../../geometry/vector";
import { pullPath } from "../../route/problems";
import type { BuiltRun } from "./builtRun";

/** The centerline of each pull where the run stands in the job [in]: from its Start, or from the job's zero without one. */
export const placedPulls = ({ run, pulls }: BuiltRun): Path[] =>
  pulls.map(({ pull }) => {
    const { points, radii } = pullPath(pull);
    return { points: points.map((point) => add(point, run.start ?? ORIGIN)), radii };
  });
