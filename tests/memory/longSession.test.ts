/** The same as edits.test.ts at the size of a large job, where one fault of the past showed only. */
import { EDITS, follow } from "./session";

test("1,000 runs, every third edit", () =>
  follow(
    1000,
    EDITS.filter((_, index) => index % 3 === 0),
  ));
