import type { CutJob } from "./cutJob";
import type { CutResult, CutSoFar } from "./cutWork";
import type { CutMessage } from "./cutWorker";

export interface Planning {
  result: Promise<CutResult>;
  cancel(): void;
}

/** Plans in a worker, so that the pane stays awake; the solver loads with it. */
export function planInWorker(job: CutJob, onProgress: (soFar: CutSoFar) => void): Planning {
  const worker = new Worker(/* webpackChunkName: "pane-cuts" */ new URL("./cutWorker.ts", import.meta.url));
  const result = new Promise<CutResult>((resolve, reject) => {
    worker.onmessage = ({ data }: MessageEvent<CutMessage>) => {
      if ("soFar" in data) return onProgress(data.soFar);
      worker.terminate();
      if ("result" in data) resolve(data.result);
      else reject(new Error(data.problem));
    };
    worker.onerror = (event) => {
      worker.terminate();
      reject(new Error(event.message));
    };
  });
  worker.postMessage(job);
  return { result, cancel: () => worker.terminate() };
}
