/** The same as edits.test.ts at the sizes of real jobs; one fault of the past showed only at 1,000. */
import { EDITS, follow } from "./session";

test.each([
  [400, 7],
  [1000, 3],
])("%i runs, every %ith edit", (runs, every) =>
  follow(
    runs,
    EDITS.filter((_, index) => index % every === 0),
  ),
);
