import type { Edition } from "../../raceway/code/edition";
import type { RuleBook } from "../../rules/rules";
import { isUserError } from "../../units/errors";
import { breakerInWords } from "../../wiring/breaker";
import { fillOf } from "../../wiring/fill";
import { readConductors } from "../../wiring/readConductors";
import { allowedAmpacity, largestBreaker } from "../../wiring/protection";
import { sizeInWords } from "../../wiring/wireSizes";
import { ampacityFindings } from "../code/ampacityChecks";
import { kindInWords, runCircuit } from "../code/circuits";
import { tooFull } from "../code/conduitChecks";
import type { Finding } from "../code/finding";
import { groundTooSmall, leastGround } from "../code/groundChecks";
import { runConductors } from "../code/runConductors";
import { linesOf, type Job } from "../job/job";
import { pullEndName, pullingOf, pullWays } from "../pull/pulling";
import { willPull } from "../pull/willPull";
import type { BuiltRun } from "../run/builtRun";

type Cell = string | number;

const AMPACITY = ["Conductors", "Carrying", "Base A", "Adjustment", "Air °C", "Correction", "Ampacity A"] as const;
const BREAKER = ["Terminals A", "Allowed A", "Breaker", "Largest breaker A", "Least ground"] as const;
const PULL = ["Fill %", "Feed from", "Tension lb", "Sidewall lb/ft", "Of limit %"] as const;

/** Each run with conductors by its header. */
type Line = Readonly<Partial<Record<(typeof AMPACITY | typeof BREAKER | typeof PULL)[number], Cell>>>;

/**
 * What each run's conductors may carry and how hard they pull, with a header row: the largest conductors of the circuit, and the pull
 * that comes nearest to a limit, fed from its better end. A run without Conductors has no line; one that is not built says why.
 */
export function circuitTable(job: Job, edition: Edition): Cell[][] {
  const headers = [...AMPACITY, ...BREAKER, ...PULL];
  const row = (run: string, line: Line, verdict: string): Cell[] => [
    run,
    ...headers.map((header) => line[header] ?? ""),
    verdict,
  ];
  const rows = linesOf<Cell[] | undefined>(
    job,
    (built) => (built.run.conductors === "" ? [] : [row(built.run.name, ...circuitLine(built, edition, job.rules))]),
    ({ name, run, problem }) => (run?.conductors === "" ? undefined : row(name, {}, problem)),
  ).flatMap((each) => (each ? [each] : []));
  const none = row("all runs", {}, "no run has anything under Conductors");
  return [["Run", ...headers, "Verdict"], ...(rows.length > 0 ? rows : [none])];
}

function circuitLine(built: BuiltRun, edition: Edition, rules: RuleBook): [Line, string] {
  const words: string[] = [];
  const orWords = (cells: () => Line): Line => {
    try {
      return cells();
    } catch (error) {
      if (!isUserError(error)) throw error;
      words.push(error.message);
      return {};
    }
  };
  const read = orWords(() => fillCells(built, edition));
  if (words.length > 0) return [{}, words.join(" ")];
  const line = {
    ...orWords(() => ampacityCells(built, edition, rules)),
    ...read,
    ...orWords(() => pullCells(built, rules)),
  };
  const found: Finding[] = [
    ...ampacityFindings(built, edition, rules),
    ...groundTooSmall(built, edition, rules),
    ...tooFull(built, edition),
    ...willPull(built, rules),
  ];
  if (found.some(({ weight }) => weight === "stop")) words.push("stopped, see Checks");
  return [line, words.length > 0 ? [...new Set(words)].join(" ") : "ok"];
}

function ampacityCells(built: BuiltRun, edition: Edition, rules: RuleBook): Line {
  const circuit = runCircuit(built, rules);
  if (!circuit) return {};
  const { breaker } = built.run;
  const { size, metal } = circuit.conductors;
  const { base, adjustment, correction, ampacity, atTerminals, allowed } = allowedAmpacity(size, circuit);
  return {
    ...{ Conductors: kindInWords(circuit.conductors), Carrying: circuit.carrying, "Air °C": circuit.celsius },
    ...{ "Base A": base, Adjustment: adjustment, Correction: correction, "Ampacity A": ampacity },
    ...{ "Terminals A": atTerminals, "Allowed A": allowed },
    "Largest breaker A": largestBreaker(size, circuit.sets * allowed, metal),
    ...(breaker && {
      Breaker: breakerInWords(breaker),
      "Least ground": sizeInWords(
        leastGround(breaker, circuit, circuit.roles.grounds[0]?.metal ?? "copper", edition).least,
      ),
    }),
  };
}

function fillCells({ run, pulls }: BuiltRun, edition: Edition): Line {
  const longest = Math.max(...pulls.map(({ parts }) => parts.developed));
  const { ratio } = fillOf(run.raceway, run.size, readConductors(run.conductors, "Conductors"), edition, longest);
  return { "Fill %": 100 * ratio };
}

function pullCells(built: BuiltRun, rules: RuleBook): Line {
  const ways = pullWays(built, pullingOf(built, runConductors(built.run), rules)).map(([best]) => best);
  const place = ways.reduce((worst, way, index) => (way.share > ways[worst]!.share ? index : worst), 0);
  const { from, tension, sidewall, share } = ways[place]!;
  const pull = ways.length > 1 ? `pull ${place + 1}: ` : "";
  return {
    "Feed from": pull + pullEndName(built, place, from),
    ...{ "Tension lb": tension, "Sidewall lb/ft": sidewall, "Of limit %": 100 * share },
  };
}
