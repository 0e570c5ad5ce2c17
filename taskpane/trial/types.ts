import type { Scratch } from "../excel/trial";

/** What a line of the report tells: as the guide has it, otherwise, not to be had in this Excel, or only measured. */
export type Verdict = "same" | "differs" | "absent" | "told";

export interface Line {
  readonly what: string;
  readonly found: string;
  readonly verdict: Verdict;
}

/** What one part of the trial works with. */
export interface Bench {
  readonly scratch: Scratch;
  /** A name for a table that the workbook does not have. */
  tableName(name: string): string;
  /** Told what is being done. @throws Canceled once the person has had enough */
  step(words: string): void;
  /** Asks again and again until there is an answer; undefined when it takes longer than {@link PATIENCE}. */
  until<T>(ask: () => Promise<T | undefined>): Promise<{ answer: T | undefined; milliseconds: number }>;
}

export interface Part {
  /** How docs/excel.md names it. */
  readonly id: string;
  readonly title: string;
  run(bench: Bench): Promise<Line[]>;
}

/** The person has had enough. */
export class Canceled extends Error {
  override readonly name = "Canceled";
}

export const line = (what: string, found: string, verdict: Verdict): Line => ({ what, found, verdict });

/** What should be so, and what was found instead. */
export const expected = (what: string, isSo: boolean, found: string): Line =>
  line(what, isSo ? "yes" : found, isSo ? "same" : "differs");

export const seconds = (milliseconds: number): string => `${(milliseconds / 1000).toFixed(2)} s`;
