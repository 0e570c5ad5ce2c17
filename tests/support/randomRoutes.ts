/** Random routes that can be walked: every kind of step, legs with room for what stands on them. */
import fc from "fast-check";
import { DIRECTIONS, type Direction, type RouteStep } from "../../src/route/text/types";

const AXES = [["up", "down"], ["north", "south"], ["east", "west"]] as const; // prettier-ignore
const axisOf = (direction: Direction) => AXES.findIndex((axis) => (axis as readonly string[]).includes(direction));

const joint = fc.record({
  kind: fc.constantFrom("corner", "sweep", "kick", "offset", "rolling", "box offset", "saddle", "wide saddle", "box"),
  /** Which of the two axes beside the present one, and which way on each. */
  swap: fc.boolean(),
  first: fc.integer({ min: 0, max: 1 }),
  second: fc.integer({ min: 0, max: 1 }),
  size: fc.double({ min: 2.5, max: 7, noNaN: true }),
  width: fc.double({ min: 3, max: 9, noNaN: true }),
  angle: fc.double({ min: 30, max: 60, noNaN: true }),
  length: fc.double({ min: 70, max: 150, noNaN: true }),
});

/** A start direction and up to seven joints; after a kick the run turns into the axis square to both. */
export const randomRoute: fc.Arbitrary<RouteStep[]> = fc
  .record({ start: fc.constantFrom(...DIRECTIONS), joints: fc.array(joint, { maxLength: 7 }) })
  .map(({ start, joints }) => {
    const steps: RouteStep[] = [{ kind: "leg", direction: start, length: 81 }];
    let heading: Direction = start;
    for (const { kind, swap, first, second, size, width, angle, length } of joints) {
      const beside = [0, 1, 2].filter((axis) => axis !== axisOf(heading));
      if (swap) beside.reverse();
      const [toward, other] = [AXES[beside[0]!]![first]!, AXES[beside[1]!]![second]!];
      const turn: RouteStep = { kind: "leg", direction: toward, length };
      const ahead: RouteStep = { kind: "ahead", length };
      if (kind === "box") {
        steps.push({ kind: "box" }, turn);
        heading = toward;
      } else if (kind === "corner" || kind === "sweep") {
        if (kind === "sweep") steps.push({ kind: "sweep", radius: 12 + size, shots: swap ? null : 5 });
        steps.push(turn);
        heading = toward;
      } else if (kind === "kick") {
        steps.push({ kind: "bend", angle, toward }, ahead, { kind: "leg", direction: other, length: length + 3 });
        heading = other;
      } else if (kind === "saddle" || kind === "wide saddle") {
        steps.push({ kind: "saddle", height: size + 2, toward, over: kind === "saddle" ? null : width, angle }, ahead);
      } else {
        const rise = { rise: size + 3, toward };
        if (kind === "box offset") steps.push({ kind, rise, angle });
        else if (kind === "offset") steps.push({ kind, rises: [rise], angle });
        else steps.push({ kind: "offset", rises: [rise, { rise: width, toward: other }], angle });
        steps.push(ahead);
      }
    }
    return steps;
  });
