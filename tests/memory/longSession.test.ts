/** The same as edits.test.ts at the size of a real job; one fault of the past showed only at 1,000. */
import { EDITS, follow } from "./session";

test(
  "1,000 runs, every third edit, every second answer against a first one",
  () =>
    follow(
      1000,
      EDITS.filter((_, index) => index % 3 === 0),
      2,
    ),
  300_000,
);
