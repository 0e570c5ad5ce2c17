import { readRuns, type RunRow } from "../../src/shop/run/runsTable";
import { attempt, type Attempt } from "../components/attempt";
import type { Cell } from "./items";

/** The rows of a Runs table that hold anything, or why the table cannot be read. */
export const runsOf = (cells: readonly (readonly Cell[])[]): Attempt<RunRow[]> => attempt(() => readRuns(cells));
