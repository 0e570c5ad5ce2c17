import { throughSteps } from "../../throughSteps";
import type { CutJob } from "./cutJob";
import { planJobInSteps, type CutResult, type CutSoFar } from "./cutWork";

/** What the worker tells the pane. */
export type CutMessage = { soFar: CutSoFar } | { result: CutResult } | { problem: string };

addEventListener("message", ({ data }: MessageEvent<CutJob>) => {
  const tell = (message: CutMessage) => postMessage(message);
  try {
    tell({ result: throughSteps(planJobInSteps(data), (soFar) => tell({ soFar })) });
  } catch (error) {
    tell({ problem: error instanceof Error ? error.message : String(error) });
  }
});
