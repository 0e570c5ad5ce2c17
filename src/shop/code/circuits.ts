import { remember } from "../../memory/remember";
import type { RuleBook } from "../../rules/rules";
import { columnOf } from "../../wiring/ampacity";
import type { Conductors } from "../../wiring/conductors";
import type { Circuit } from "../../wiring/protection";
import { rolesOf, type Roles } from "../../wiring/roles";
import { circularMils, sizeInWords } from "../../wiring/wireSizes";
import type { BuiltRun } from "../run/builtRun";
import { runConductors } from "./runConductors";

/** The conductors that a run's Breaker is for: its largest of the circuit. */
export interface RunCircuit extends Circuit {
  readonly conductors: Conductors;
  readonly roles: Roles;
}

/** Raceways up to this are nipples: nothing is taken off for the number of conductors (310.15(C)(1)(b)) [in]. */
const NIPPLE = 24;
const BREAKER_OF_SMALL_TERMINALS = 100;

/** What the ampacity of a run's conductors depends on; undefined where it has none of a circuit. */
export const runCircuit: (built: BuiltRun, rules: RuleBook) => RunCircuit | undefined = remember(
  ({ run, pulls }: BuiltRun, rules: RuleBook): RunCircuit | undefined => {
    const roles = rolesOf(runConductors(run));
    const [conductors] = [...roles.circuit].sort((a, b) => circularMils(b.size) - circularMils(a.size));
    if (!conductors || conductors.type === "bare") return undefined;
    const isNipple = pulls.every(({ parts }) => parts.developed <= NIPPLE);
    const small = (run.breaker?.amperes ?? 0) <= BREAKER_OF_SMALL_TERMINALS;
    return {
      conductors,
      roles,
      metal: conductors.metal,
      carrying: isNipple ? Math.min(3, roles.carrying) : roles.carrying,
      celsius: run.ambient ?? rules.number("Ambient temperature"),
      insulation: columnOf(conductors.type, run.place?.wet ?? false),
      terminals: rules.number(small ? "Terminals to 100 A" : "Terminals above 100 A"),
      sets: run.breaker?.sets ?? 1,
    };
  },
);

/** @example kindInWords(…) //=> "#12 THHN" */
export const kindInWords = ({ size, type, metal }: Conductors): string =>
  `${sizeInWords(size)} ${type}${metal === "aluminum" ? " aluminum" : ""}`;
