/** The cutting room's one door: what may be asked, the plan that answers, and its independent check. */
export { leastCost, planCuts, planCutsInSteps } from "./solve";
export { isAhead, planAhead } from "./ahead";
export { verifyPlan } from "./checking/verify";
export { roundUpToSteps, showSteps, stepsToInches, toSteps, type CutGrid } from "./model/grid";
export type { CutPiece, CutRequest, CutStock } from "./model/request";
export type { CutPattern, CutPlan, Cuts } from "./checking/plan";
export { DEFAULT_STEPS } from "./model/work";
