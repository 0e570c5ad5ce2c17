import type { DrawnRows, RunsReached } from "../../src/drawn/drawnRows";
import type { Drawing } from "../../src/drawn/file/drawing";
import { lookAtRuns, openDrawing, type DrawingFile, type DrawingWishes, type OpenedDrawing } from "./drawingWork";
import { throughSteps } from "../throughSteps";

/** What the pane asks of the worker: to read a file, then to lay its runs out, as often as it likes. */
export type DrawingQuestion = { file: DrawingFile } | { wishes: DrawingWishes };

/** What the worker tells the pane. */
export type DrawingMessage =
  { opened: OpenedDrawing } | { reached: RunsReached } | { found: DrawnRows } | { problem: string };

let drawing: Drawing | undefined;

addEventListener("message", ({ data }: MessageEvent<DrawingQuestion>) => {
  const tell = (message: DrawingMessage) => postMessage(message);
  try {
    if ("file" in data) {
      const read = openDrawing(data.file);
      drawing = read.drawing;
      return tell({ opened: read.opened });
    }
    tell({ found: throughSteps(lookAtRuns(drawing!, data.wishes), (reached) => tell({ reached })) });
  } catch (error) {
    tell({ problem: error instanceof Error ? error.message : String(error) });
  }
});
