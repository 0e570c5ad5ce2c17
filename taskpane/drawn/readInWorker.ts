import type { DrawnRows, RunsReached } from "../../src/drawn/drawnRows";
import type { DrawingFile, DrawingWishes, OpenedDrawing } from "./drawingWork";
import type { DrawingMessage, DrawingQuestion } from "./drawingWorker";

/** A drawing that is read beside the pane. */
export interface DrawingReader {
  open(): Promise<OpenedDrawing>;
  /** Lays its runs out; after {@link open}. */
  look(wishes: DrawingWishes, onReached: (reached: RunsReached) => void): Promise<DrawnRows>;
  /** Ends the worker; whoever waits for it is told. */
  stop(): void;
}

/** Reads a drawing in a worker, so that the pane stays awake; what reads drawings loads with it. */
export function readInWorker(file: DrawingFile): DrawingReader {
  const worker = new Worker(/* webpackChunkName: "pane-drawing" */ new URL("./drawingWorker.ts", import.meta.url));
  let giveUp: ((reason: Error) => void) | undefined;
  const ask = <T>(question: DrawingQuestion, answer: (message: DrawingMessage) => T | undefined): Promise<T> =>
    new Promise((resolve, reject) => {
      giveUp = reject;
      worker.onmessage = ({ data }: MessageEvent<DrawingMessage>) => {
        if ("problem" in data) return reject(new Error(data.problem));
        const found = answer(data);
        if (found !== undefined) resolve(found);
      };
      worker.onerror = (event) => reject(new Error(event.message));
      worker.postMessage(question);
    });
  return {
    open: () => ask({ file }, (message) => ("opened" in message ? message.opened : undefined)),
    look: (wishes, onReached) =>
      ask({ wishes }, (message) => {
        if ("reached" in message) onReached(message.reached);
        return "found" in message ? message.found : undefined;
      }),
    stop: () => {
      worker.terminate();
      giveUp?.(new Error("Stopped; nothing was added."));
    },
  };
}
