import { remember } from "../../memory/remember";
import type { Edition } from "../../raceway/code/rules";
import type { RuleBook } from "../../rules/rules";
import { ampacityFindings, dryTypeInWet, hotWithoutAmbient } from "../code/ampacityChecks";
import { boxesTooFull } from "../code/boxChecks";
import { groundTooSmall } from "../code/groundChecks";
import { pullBoxSizes } from "../code/pullBoxChecks";
import { hangingConductors } from "../pull/riserChecks";
import { assumedFriction, willPull } from "../pull/willPull";
import { tooShallow } from "../code/coverChecks";
import { unreadableEnds } from "../code/endChecks";
import { throatsNeeded } from "../code/throats";
import { expansionNeeded } from "../code/movementChecks";
import { takeOutsUnknown } from "./bodyChecks";
import { rackStands } from "./rackChecks";
import { coarseSweeps, crowdedBends, pastTheDial, shortTails } from "./benchChecks";
import { isBuilt, readableRuns, type Job, type JobRow } from "../job/job";
import { runPieces, type BuiltRun } from "../run/builtRun";
import { tooFewStraps, tooFull, tooManyDegrees, tooTight } from "../code/conduitChecks";
import { wrongPlace } from "./placeChecks";
import type { Finding } from "../code/finding";
import { clashFindings } from "./clashes";
import { assumedElbowEnds } from "./elbowEnds";
import { elbowFindings } from "./elbowChecks";
import { noShoeListed } from "./noShoe";
import { meetsItself } from "./meetsItself";
import { placedNowhere, repeatedNames, unnamedRows } from "./nameChecks";
import { unionsNeeded } from "./unions";
import { unmeasuredShoes } from "./shoeChecks";
import { zeroQuantities } from "../run/zeroQuantity";

/** Every finding of a job: shoes and rules that cannot be read, the runs in their order, shoes that were never measured. */
export function checkJob(job: Job, edition: Edition): Finding[] {
  const { shoes, rules } = job;
  const shoeFindings = shoes.problems.map(({ message }): Finding => ({
    run: "Shoes",
    weight: "stop",
    rule: "a shoe must be readable",
    finding: message,
    fix: "Correct the row, or delete it to use the built-in shoe.",
  }));
  const ruleFindings = rules.problems.map((message): Finding => ({
    run: "Rules",
    weight: "stop",
    rule: "a rule must be readable",
    finding: message,
    fix: "Correct the row, or delete it to use the built-in rule.",
  }));
  return [
    ...shoeFindings,
    ...ruleFindings,
    ...quantityFindings(job),
    ...unnamedRows(job),
    ...repeatedNames(job),
    ...job.rows.flatMap((row) => checkRow(row, edition, rules)),
    ...boxesTooFull(job, edition),
    ...assumedFriction(job),
    ...assumedElbowEnds(job),
    ...clashFindings(job),
    ...unmeasuredShoes(job),
  ];
}

/** Every finding of one row: the same, whoever asks. */
export const checkRow = (row: JobRow, edition: Edition, rules: RuleBook): readonly Finding[] =>
  isBuilt(row) ? checkBuiltRun(row.built, edition, rules) : [notBuilt(row.name, row.problem)];

/** The finding for a run that cannot be read or built. */
const notBuilt = (run: string, message: string): Finding => ({
  run,
  weight: "stop",
  rule: "a run must be readable, and its legs and sticks long enough for its bends and couplings",
  finding: message,
  fix: "Correct the row; its other cells are untouched.",
});

/** Every finding of one run that can be built. */
export const checkBuiltRun: (built: BuiltRun, edition: Edition, rules: RuleBook) => readonly Finding[] = remember(
  (built, edition, rules) =>
    [
      ...placedNowhere(built, rules),
      ...noShoeListed(built),
      ...tooManyDegrees(built, edition),
      ...tooTight(built, edition),
      ...tooFull(built, edition),
      ...wrongPlace(built, edition),
      ...throatsNeeded(built, edition),
      ...dryTypeInWet(built, edition, rules),
      ...hotWithoutAmbient(built, edition, rules),
      ...ampacityFindings(built, edition, rules),
      ...groundTooSmall(built, edition, rules),
      ...pullBoxSizes(built, edition),
      ...unreadableEnds(built),
      ...willPull(built, rules),
      ...hangingConductors(built, edition),
      ...tooFewStraps(built, edition),
      ...tooShallow(built, edition),
      ...expansionNeeded(built, edition, rules),
      ...pastTheDial(built),
      ...crowdedBends(built),
      ...meetsItself(built),
      ...elbowFindings(built),
      ...unionsNeeded(built),
      ...takeOutsUnknown(built),
      ...rackStands(built),
      ...coarseSweeps(built),
      ...runPieces(built).flatMap((piece) => shortTails(built, piece)),
    ].map((finding) => ({ ...finding, finding: oneStop(finding.finding) })),
);

/** A sentence that ends in "in." takes no second stop. */
const oneStop = (sentence: string): string => sentence.replace(/\.\.$/, ".");

/** Quantities that count as 1 without saying so. */
export const quantityFindings = (job: Job): Finding[] =>
  zeroQuantities(readableRuns(job)).map((finding) => ({
    run: "Runs",
    weight: "look",
    rule: "a Quantity is 1 or more; an empty one counts as 1",
    finding: `${finding}.`,
    fix: "Write how many there are. Delete the row of a run that is not to be made.",
  }));
