/**
 * The cutting room's one door: what may be asked, the plan that answers, and its independent check.
 *
 * Who is new here reads, in this order: model/request (what is asked) and checking/plan (the answer); solve (the stages);
 * model/model (pieces as weights, sticks as bins) and model/counts (what prices prove); filling/search (the least cost)
 * and filling/dive (from fractions to sticks); rests/longestRest (the longest rest); checking/verify (what is shown only
 * if it holds).
 */
export { isMakeshift, leastCost, planCuts, planCutsInSteps } from "./solve";
export { isPutOff, planAhead, rememberPlanned } from "./ahead";
export { verifyPlan } from "./checking/verify";
export { roundUpToSteps, showSteps, stepsToInches, toSteps, type CutGrid } from "./model/grid";
export type { CutPiece, CutRequest, CutStock } from "./model/request";
export type { CutPattern, CutPlan, Cuts } from "./checking/plan";
export { DEFAULT_STEPS } from "./model/work";
