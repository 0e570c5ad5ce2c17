import type { Lengths } from "../../units/formatLength";
import { showMoney, toCent } from "../../units/money";
import type { CouplingAdvice } from "./advice";

/** Runs that are named; more are counted. */
const MOST_NAMED = 6;

const many = (count: number, one: string): string => `${count} ${one}${count === 1 ? "" : "s"}`;

/**
 * What couplings to add and what that saves, in one line.
 *
 * @param tape how a place along a run is told
 * @example adviceWords({ sticks: 3, couplings: 6, saved: 18.48, joints }, AS_WRITTEN.tape)
 * //=> "3 sticks less for 6 couplings more, 18.48 saved: TH-07 joined at 4' 2\" too, …"
 */
export function adviceWords({ sticks, couplings, saved, joints }: CouplingAdvice, tape: Lengths["tape"]): string {
  const named = joints
    .slice(0, MOST_NAMED)
    .map(({ run, added }) => `${run} joined at ${added.map(tape).join(" and ")} too`);
  const others = joints.length - named.length;
  const list = [...named, ...(others > 0 ? [`${many(others, "run")} more`] : [])].join(", ");
  return `${many(sticks, "stick")} less for ${many(couplings, "coupling")} more, ${showMoney(toCent(saved))} saved: ${list}.`;
}
