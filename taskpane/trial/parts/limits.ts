import { expected, line, seconds, type Line, type Part } from "../types";
import { answerOf } from "../waiting";
import { manyRuns } from "../manyRuns";

/** Letters of one cell: Excel takes 32,767. */
const LETTERS = 30_000;
const MEGABYTE = 1024 * 1024;
const cellsOf = (megabytes: number): string[][] =>
  Array.from({ length: Math.ceil((megabytes * MEGABYTE) / LETTERS) }, () => ["x".repeat(LETTERS)]);

/** How much goes with one request, comes back with one, and is handed to a function. */
export const limitsPart: Part = {
  id: "limits",
  title: "How much Excel takes at once",
  async run(bench): Promise<Line[]> {
    const { scratch, step } = bench;
    const lines: Line[] = [];
    for (const megabytes of [1, 3, 4.5, 6]) {
      step(`writes ${megabytes} MB`);
      const cells = cellsOf(megabytes);
      const begun = performance.now();
      const found = await scratch.enter(0, 0, cells, true).then(
        () => `taken in ${seconds(performance.now() - begun)}`,
        (error: Error) => error.message,
      );
      // What we send ourselves is below 4 MB.
      const what = `${megabytes} MB written with one request`;
      lines.push(megabytes < 4 ? expected(what, found.startsWith("taken"), found) : line(what, found, "told"));
      if (!found.startsWith("taken")) break;
    }
    for (const megabytes of [3, 4.5]) {
      step(`reads ${megabytes} MB`);
      await scratch.enter(0, 0, cellsOf(megabytes));
      const rows = cellsOf(megabytes).length;
      const found = await scratch.read(0, 0, rows, 1).then(
        (cells) => (cells.every(([cell]) => String(cell).length === LETTERS) ? "handed over" : "cut short"),
        (error: Error) => error.message,
      );
      const what = `${megabytes} MB read with one request`;
      lines.push(megabytes < 4 ? expected(what, found === "handed over", found) : line(what, found, "told"));
    }
    // A column that no function reads makes the argument as large as we like.
    const runs = manyRuns(150).map((row, at) => [...row, at === 0 ? "Remarks" : "x".repeat(LETTERS)]);
    await scratch.enter(0, 10, runs);
    for (const [rows, megabytes] of [
      [101, 2.9],
      [151, 4.3],
    ] as const) {
      step(`hands ${megabytes} MB to a function`);
      const formula = (last: string) => `=ROWS(CONDUIT.JOB.SCHEDULE(K1:${last}${rows}))`;
      const wide = await answerOf(bench, 0, 20, formula("P"));
      const narrow = await answerOf(bench, 1, 20, formula("O"));
      const found = wide === narrow ? "worked out" : String(wide ?? "no answer");
      const what = `${megabytes} MB handed to a function`;
      lines.push(megabytes < 4 ? expected(what, wide === narrow, found) : line(what, found, "told"));
    }
    return lines;
  },
};
