/** What is remembered changes no answer: after every edit the functions say what they would say for the first time. */
import { EDITS, follow } from "./session";

/** A loaded machine takes its time [ms]. */
const PATIENCE = 300_000;

test("60 runs, each kind of edit one after the other", () => follow(60, EDITS), PATIENCE);
test("400 runs, all edits, every sixth answer against a first one", () => follow(400, EDITS, 6), PATIENCE);
