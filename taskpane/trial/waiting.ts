import type { Read } from "../excel/trial";
import type { Bench } from "./types";

/** What a cell shows while a function of ours is at work or on its way. */
const ON_THE_WAY = new Set<Read>(["", "#BUSY!", "#GETTING_DATA", "#CONNECT!"]);

export const isAnswered = (cell: Read | undefined): boolean => cell !== undefined && !ON_THE_WAY.has(cell);

/** Longest wait for an answer [ms], and the pause between two looks. */
export const PATIENCE = 60_000;
const PAUSES = { first: 20, growth: 1.4, last: 400 };

/** See {@link Bench.until}. */
export async function untilAnswered<T>(
  ask: () => Promise<T | undefined>,
  goOn: () => void,
  patience = PATIENCE,
): Promise<{ answer: T | undefined; milliseconds: number }> {
  const begun = performance.now();
  for (let pause = PAUSES.first; ; pause = Math.min(PAUSES.last, pause * PAUSES.growth)) {
    goOn();
    const answer = await ask();
    const milliseconds = performance.now() - begun;
    if (answer !== undefined || milliseconds > patience) return { answer, milliseconds };
    await new Promise((resolve) => setTimeout(resolve, pause));
  }
}

/** Enters one formula and waits for its first cell. */
export async function answerOf(
  { scratch, until }: Pick<Bench, "scratch" | "until">,
  row: number,
  column: number,
  formula: string,
): Promise<Read | undefined> {
  await scratch.enter(row, column, [[formula]]);
  const { answer } = await until(async () => {
    const cell = (await scratch.read(row, column, 1, 1))[0]?.[0];
    return isAnswered(cell) ? cell : undefined;
  });
  return answer;
}
