import { Worker } from "node:worker_threads";
import type { Reading } from "./reading";

/** What came of one file: its reading, or why there is none. */
export type Answer = { hash: string } & (
  { reading: Reading; problem?: undefined } | { reading?: undefined; problem: string }
);

export interface ThreadWishes {
  /** The built code of a thread, and the folder of functions.js and functions.json. */
  script: string;
  bundle: string;
  threads: number;
  /** Told after each file, in the order in which they are done. */
  onDone(done: number): void;
}

/**
 * Has every file read by one of a number of threads; the answers stand in the order of the files. A thread that breaks
 * down costs the file it had in hand; another takes its place.
 */
export async function readInThreads(files: readonly string[], wishes: ThreadWishes): Promise<Answer[]> {
  const answers: Answer[] = [];
  const waiting = files.map((file, place) => ({ file, place }));
  let done = 0;
  const work = async (): Promise<void> => {
    let thread: Worker | undefined;
    for (let next = waiting.shift(); next; next = waiting.shift()) {
      thread ??= new Worker(wishes.script, { workerData: { bundle: wishes.bundle } });
      const { answer, broken } = await ask(thread, next.file);
      answers[next.place] = answer;
      if (broken) {
        await thread.terminate();
        thread = undefined;
      }
      wishes.onDone((done += 1));
    }
    await thread?.terminate();
  };
  await Promise.all(Array.from({ length: Math.min(wishes.threads, files.length) }, work));
  return answers;
}

/** The answer of a thread to one file; its end, or a fault in it, is an answer too. */
function ask(thread: Worker, file: string): Promise<{ answer: Answer; broken: boolean }> {
  return new Promise((resolve) => {
    const over = (answer: Answer, broken: boolean) => {
      thread.off("message", onMessage).off("error", onError).off("exit", onExit);
      resolve({ answer, broken });
    };
    const gone = (why: string) => over({ hash: "", problem: `It could not be worked out: ${why}` }, true);
    const onMessage = (answer: Answer) => over(answer, false);
    const onError = (error: Error) => gone(error.message);
    const onExit = (code: number) => gone(`the thread that had it in hand ended with code ${code}.`);
    thread.on("message", onMessage).on("error", onError).on("exit", onExit);
    thread.postMessage(file);
  });
}
