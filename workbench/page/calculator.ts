import type { DescribedFunctions, FunctionsMetadata } from "../engine";

/** Starts the worker that calculates, with the functions that Excel loads. */
export async function startWorker(): Promise<{ functions: DescribedFunctions; worker: Worker }> {
  const worker = new Worker("worker.js");
  const answer = await fetch("../functions.json");
  if (!answer.ok) throw new Error(`functions.json: ${answer.status} ${answer.statusText}`);
  const functions = { namespace: "CONDUIT", metadata: (await answer.json()) as FunctionsMetadata };
  worker.postMessage(functions);
  return { functions, worker };
}
