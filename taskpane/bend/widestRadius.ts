import type { BuiltRun } from "../../src/shop/run/builtRun";

/** Centerline radius of a run's bend of the widest angle [in]; of the shoe's 90 where there is none. */
export function widestRadius({ pulls, shoe }: Pick<BuiltRun, "pulls" | "shoe">): number {
  const [widest] = pulls.flatMap(({ parts }) => parts.bends).sort((a, b) => b.angle - a.angle);
  return widest?.radius ?? shoe.radius;
}
