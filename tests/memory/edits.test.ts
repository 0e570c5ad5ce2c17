/** What is remembered changes no answer: after every edit the functions say what they would say for the first time. */
import { EDITS, follow } from "./session";

test("60 runs, each kind of edit one after the other", () => follow(60, EDITS));
