import { commonRule, nameRule, type Edition } from "../../raceway/code/rules";
import type { RuleBook } from "../../rules/rules";
import { isUserError } from "../../units/errors";
import { show } from "../../units/show";
import { LISTED_AIR } from "../../wiring/ampacity";
import { breakerInWords } from "../../wiring/breaker";
import { allowedAmpacity, circuitInWords, largestBreaker, smallestFor, type Allowed } from "../../wiring/protection";
import { sizeInWords } from "../../wiring/wireSizes";
import type { BuiltRun } from "../run/builtRun";
import { kindInWords, runCircuit, type RunCircuit } from "./circuits";
import type { Finding } from "./finding";

/**
 * Ampacity of a run's largest conductors with what their number and the air take off, against the breaker where one is given.
 */
export function ampacityFindings(built: BuiltRun, edition: Edition, rules: RuleBook): Finding[] {
  const circuit = runCircuit(built, rules);
  if (!circuit) return [];
  try {
    const allowed = allowedAmpacity(circuit.conductors.size, circuit);
    return built.run.breaker
      ? underBreaker(built, edition, circuit, allowed)
      : withoutBreaker(built, edition, circuit, allowed);
  } catch (error) {
    if (!isUserError(error)) throw error;
    const rule = nameRule(commonRule("ampacity", edition));
    const fix = "Correct Ambient or Conductors, or have the ampacity worked out for this place.";
    return [{ run: built.run.name, weight: "look", rule, finding: error.message, fix }];
  }
}

/** A size whose device is limited by its ampacity alone. */
const NO_SMALL_CONDUCTOR = "8";

function withoutBreaker({ run }: BuiltRun, edition: Edition, circuit: RunCircuit, allowed: Allowed): Finding[] {
  if (allowed.adjustment === 1 && allowed.correction === 1) return [];
  const rule = commonRule(allowed.adjustment < 1 ? "adjustment" : "ambient", edition);
  return [
    {
      run: run.name,
      weight: "look",
      rule: nameRule(rule),
      finding: `${kindInWords(circuit.conductors)} carry ${working(allowed, edition)} each: ${circuitInWords(circuit)}.`,
      fix: "Write the breaker under Breaker to have it checked; name grounds and neutrals in Conductors: 1 #12 THHN ground.",
    },
  ];
}

function underBreaker({ run }: BuiltRun, edition: Edition, circuit: RunCircuit, allowed: Allowed): Finding[] {
  const { amperes, sets } = run.breaker!;
  const { size, metal } = circuit.conductors;
  const total = sets * allowed.allowed;
  const most = largestBreaker(size, total, metal);
  if (amperes <= most) return [];
  const isSmall = most < largestBreaker(NO_SMALL_CONDUCTOR, total, metal);
  const needed = smallestFor(amperes, circuit);
  return [
    {
      run: run.name,
      weight: "stop",
      rule: nameRule(commonRule(isSmall ? "smallConductors" : "protection", edition)),
      finding:
        `a breaker of ${breakerInWords(run.breaker!)} on ${kindInWords(circuit.conductors)}: ${working(allowed, edition)} each ` +
        `(${circuitInWords(circuit)}); the largest breaker is ${most} A.`,
      fix:
        `Use ${needed === undefined ? "conductors in parallel" : `${sizeInWords(needed)} or larger`}, or a breaker of ${most} A or less. ` +
        "Circuits of motors, welders and taps follow rules of their own (240.4(E), (G)): leave their Breaker empty.",
    },
  ];
}

/** An ampacity with what it was made less by. @example "30 A · 0.7 (310.15(C)(1)) = 21 A, at the terminals 20 A" */
function working({ base, adjustment, correction, ampacity, atTerminals }: Allowed, edition: Edition): string {
  const factors = [
    adjustment < 1 ? ` · ${adjustment} (${commonRule("adjustment", edition).section})` : "",
    correction < 1 ? ` · ${correction} (${commonRule("ambient", edition).section})` : "",
  ].join("");
  const result = factors === "" ? `${base} A` : `${base} A${factors} = ${show(ampacity, 2)} A`;
  return atTerminals < ampacity ? `${result}, at the terminals ${atTerminals} A` : result;
}

/** A hot place whose air nobody told. */
export function hotWithoutAmbient({ run }: BuiltRun, edition: Edition, rules: RuleBook): Finding[] {
  if (!run.place?.hot || run.ambient !== undefined || run.conductors === "") return [];
  const celsius = rules.number("Ambient temperature");
  if (celsius > LISTED_AIR) return [];
  return [
    {
      run: run.name,
      weight: "look",
      rule: nameRule(commonRule("ambient", edition)),
      finding: `a hot place without Ambient: its conductors are checked in air of ${show(celsius, 1)} °C.`,
      fix: "Write the air's temperature under Ambient: 50, or 122 F.",
    },
  ];
}

/** Conductors in a wet place or in the ground whose type is not for it. */
export function dryTypeInWet(built: BuiltRun, edition: Edition, rules: RuleBook): Finding[] {
  const { run } = built;
  const { roles } = runCircuit(built, rules) ?? {};
  const dry = [...(roles?.circuit ?? []), ...(roles?.neutrals ?? [])].filter(({ type }) => type === "THHN");
  if (!run.place?.wet || dry.length === 0) return [];
  return [
    {
      run: run.name,
      weight: "stop",
      rule: nameRule(commonRule("wetConductors", edition)),
      finding: `THHN in a ${run.place.main === "buried" ? "raceway in the ground, which is wet inside" : "wet place"}.`,
      fix: "Use THWN, THWN-2, XHHW or XHHW-2; write THWN-2 where the conductor is marked with both.",
    },
  ];
}
