import { rememberLatest } from "../../memory/latest";
import { readRaceway } from "../../raceway/raceway";
import { usableStick } from "../../raceway/sticks";
import { readTradeSize } from "../../raceway/tradeSize";
import { readRules } from "../../rules/rules";
import { InputError, quoteValue } from "../../units/errors";
import { buildRunWith } from "./buildRun";
import type { BuiltRun } from "./builtRun";
import { fittingRule } from "../fittings/fittingRule";
import { STICK, type Run } from "./runsTable";
import { readShoes } from "../shoe/shoeBook";

/** Runs that are kept: several functions of a row ask for the same one. */
const KEPT = 5000;

/** The arguments every RUN function takes, read into a run. */
export const oneRun: (route: unknown, raceway: unknown, size: unknown) => Run = rememberLatest(readOneRun, KEPT);

function readOneRun(route: unknown, raceway: unknown, size: unknown): Run {
  if (typeof route !== "string" || route.trim() === "") {
    throw new InputError(`route must be text, as in up 4', east 12' 6"; got ${quoteValue(route)}.`);
  }
  const run = { raceway: readRaceway(raceway, "raceway"), size: readTradeSize(size, "size") };
  return {
    ...run,
    name: "run",
    job: "",
    area: "",
    route,
    quantity: 1,
    from: "",
    to: "",
    conductors: "",
    stick: usableStick(run.raceway, run.size, STICK),
    date: "",
    crew: "",
    fittings: "",
    groundingBushing: "",
  };
}

/** Reads the arguments of a RUN function and works the run out. */
export function buildOneRun(
  route: unknown,
  raceway: unknown,
  size: unknown,
  shoes: unknown,
  rules: unknown = null,
): BuiltRun {
  return buildRunWith(oneRun(route, raceway, size), readShoes(shoes), fittingRule(readRules(rules)));
}
