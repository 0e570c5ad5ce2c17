import { racewayRecord } from "../../raceway/raceway";
import { commonRule, nameRule, type Edition } from "../../raceway/code/rules";
import type { RuleBook } from "../../rules/rules";
import { isUserError } from "../../units/errors";
import { breakerInWords, type Breaker } from "../../wiring/breaker";
import { groundingSize, type WireMetal } from "../../wiring/groundingSize";
import { smallestFor } from "../../wiring/protection";
import { circularMils, sizeInWords } from "../../wiring/wireSizes";
import type { BuiltRun } from "../run/builtRun";
import { kindInWords, runCircuit, type RunCircuit } from "./circuits";
import type { Finding } from "./finding";

/** The equipment grounding conductor of a run against the least one of its breaker; where a breaker is given. */
export function groundTooSmall(built: BuiltRun, edition: Edition, rules: RuleBook): Finding[] {
  const { run } = built;
  const circuit = runCircuit(built, rules);
  if (!run.breaker || !circuit) return [];
  const common = { run: run.name, rule: nameRule(commonRule("grounding", edition)) } as const;
  const [ground] = [...circuit.roles.grounds].sort((a, b) => circularMils(b.size) - circularMils(a.size));
  if (!ground) {
    const serves = racewayRecord(run.raceway).ground;
    if (serves === "always") return [];
    return [
      {
        ...common,
        weight: "look",
        finding: `no equipment grounding conductor is named, and ${run.raceway} ${
          serves === "never"
            ? "cannot serve as one"
            : "may serve as one only in short lengths that do not move (250.118)"
        }.`,
        fix: "Name it in Conductors: 1 #10 THWN-2 ground, or 1 #10 bare.",
      },
    ];
  }
  try {
    const { least, inProportion } = leastGround(run.breaker, circuit, ground.metal, edition);
    if (circularMils(ground.size) >= circularMils(least)) return [];
    const taken = circuit.roles.assumedGround ? ` (${kindInWords(ground)} taken for the ground)` : "";
    return [
      {
        ...common,
        weight: "stop",
        finding:
          `a breaker of ${breakerInWords(run.breaker)} takes a ground of at least ${sizeInWords(least)} ${ground.metal}` +
          `${inProportion}; ` +
          `the run has ${sizeInWords(ground.size)}${taken}.`,
        fix: `Use ${sizeInWords(least)}, and see that the raceway takes it.`,
      },
    ];
  } catch (error) {
    if (!isUserError(error)) throw error;
    return [{ ...common, weight: "look", finding: error.message, fix: "Correct Breaker or Conductors." }];
  }
}

/** The least ground of a circuit, and in words where it is larger in proportion to the circuit's conductors; empty where it is not. */
interface LeastGround {
  readonly least: string;
  readonly inProportion: string;
}

/**
 * The least equipment grounding conductor of a circuit by its breaker.
 * @throws NotListedError where the table has none
 */
export function leastGround(
  { amperes }: Breaker,
  circuit: RunCircuit,
  metal: WireMetal,
  edition: Edition,
): LeastGround {
  const installed = circuit.conductors.size;
  const needed = smallestFor(amperes, circuit);
  const listed = groundingSize(amperes, metal, undefined, edition);
  if (needed === undefined || circularMils(installed) <= circularMils(needed))
    return { least: listed, inProportion: "" };
  return {
    least: groundingSize(amperes, metal, { needed, installed }, edition),
    inProportion:
      ` (${sizeInWords(listed)} by the table, larger in proportion: the circuit needs ${sizeInWords(needed)} and has ` +
      `${sizeInWords(installed)})`,
  };
}
