import { readRules } from "../../src/rules/rules";
import { jobOf, type Job } from "../../src/shop/job/job";
import type { Run } from "../../src/shop/run/runsTable";
import { readShoes, type ShoeBook } from "../../src/shop/shoe/shoeBook";

/** A job of runs that are already read, in the rows below a header row. */
export const jobOfRuns = (runs: readonly Run[], shoes: ShoeBook = readShoes(null), rules: unknown = null): Job =>
  jobOf(
    runs.map((run, index) => ({ rowNumber: index + 2, name: run.name, run })),
    shoes,
    readRules(rules),
  );
