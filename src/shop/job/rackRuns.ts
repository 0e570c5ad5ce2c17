import { along, scale } from "../../geometry/vector";
import { remember } from "../../memory/remember";
import { outsideDiameter } from "../../raceway/dimensions";
import { directionVector } from "../../route/directions";
import { memberSteps, rackRoute } from "../../route/rackRoute";
import { readRoute } from "../../route/text/readRoute";
import { writeRoute } from "../../route/text/writeRoute";
import { InputError, isUserError } from "../../units/errors";
import { showInches } from "../../units/show";
import { ROUNDING } from "../../units/tolerances";
import type { Run, RunRow } from "../run/runsTable";

/** Steeper than this a rack stands upright: sine of the slope. */
const UPRIGHT = 0.7;

/** The rows that a row stands for: itself, or one for each conduit of its rack, A-1, A-2 …; or in words why it has none. */
export function rackRows(row: RunRow): readonly RunRow[] {
  if (!row.run?.rackCell) return [row];
  const { rowNumber, name } = row;
  const runs = rackRuns(row.run);
  if (typeof runs === "string") return [{ rowNumber, name, problem: runs }];
  return runs.map((run) => ({ rowNumber, name: run.name, run }));
}

const rackRuns: (run: Run) => readonly Run[] | string = remember((run: Run) => {
  try {
    return members(run);
  } catch (error) {
    if (!isUserError(error)) throw error;
    return error.message;
  }
});

function members({ rackCell, ...run }: Run): Run[] {
  const { count, spacing, toward } = rackCell!;
  const outside = outsideDiameter(run.raceway, run.size);
  if (spacing < outside - ROUNDING) {
    throw new InputError(
      `Rack, spacing, must be at least the outside diameter of ${run.raceway} ${run.size}, ${showInches(outside)}; got ${showInches(spacing)}`,
    );
  }
  const side = directionVector(toward);
  const route = rackRoute(readRoute(run.route), side, outside);
  const upright = route.sides.find((each) => Math.abs(each.side[2]) > UPRIGHT);
  const longest = route.longer > 0 ? count : 1;
  return Array.from({ length: count }, (_, index): Run => {
    const [place, shift, name] = [index + 1, index * spacing, `${run.name}-${index + 1}`];
    return {
      ...run,
      name,
      route: index === 0 ? run.route : writeRoute(memberSteps(route, shift, name)),
      ...(run.start && { start: along(run.start, side, shift) }),
      rack: {
        ...{ place, count, spacing, offset: scale(side, shift), longest: place === longest },
        ...(upright && { uprightFrom: upright.step }),
      },
    };
  });
}
