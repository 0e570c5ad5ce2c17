import type { CutJob } from "./cutJob";
import { planJobInSteps, type CutResult, type CutSoFar } from "./cutWork";

/** What the worker tells the pane. */
export type CutMessage = { soFar: CutSoFar } | { result: CutResult } | { problem: string };

/** Least time between two reports [ms]. */
const PAUSE = 100;

addEventListener("message", ({ data }: MessageEvent<CutJob>) => {
  const tell = (message: CutMessage) => postMessage(message);
  try {
    const steps = planJobInSteps(data);
    let told = 0;
    for (let step = steps.next(); ; step = steps.next()) {
      if (step.done) return tell({ result: step.value });
      if (performance.now() - told < PAUSE) continue;
      told = performance.now();
      tell({ soFar: step.value });
    }
  } catch (error) {
    tell({ problem: error instanceof Error ? error.message : String(error) });
  }
});
