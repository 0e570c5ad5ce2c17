import type { BuiltRun } from "../run/builtRun";
import type { Finding } from "../code/finding";

/** A rack whose conduits come to lie one above the other: told once, with its first conduit. */
export function rackStands({ run }: BuiltRun): Finding[] {
  const { rack } = run;
  if (rack?.place !== 1 || rack.uprightFrom === undefined) return [];
  return [
    {
      run: run.name,
      weight: "look",
      rule: "a rack is carried along its route without twist",
      finding: `from step ${rack.uprightFrom} on its conduits lie one above the other.`,
      fix: "See that the trapezes there can be had upright, or turn the rack's side.",
      step: rack.uprightFrom,
    },
  ];
}
