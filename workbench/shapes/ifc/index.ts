/** Runs as IFC4 text. */
export { runsIfc } from "./runsIfc";

/** The time now as a STEP file writes it. */
export const timeNow = (): string => new Date().toISOString().slice(0, 19);
