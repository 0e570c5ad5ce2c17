import type { DescribedFunctions, FunctionsMetadata } from "../engine";

declare global {
  interface Window {
    /** The worker that calculates, started by the page's first lines. */
    calculator: Worker;
    /** Resolves when it did not load or broke down. */
    calculatorFailed: Promise<unknown>;
  }
}

/** The functions that Excel loads, made known to the worker. */
export async function describeFunctions(): Promise<DescribedFunctions> {
  const answer = await fetch("../functions.json");
  if (!answer.ok) throw new Error(`functions.json: ${answer.status} ${answer.statusText}`);
  const functions = { namespace: "CONDUIT", metadata: (await answer.json()) as FunctionsMetadata };
  window.calculator.postMessage(functions);
  return functions;
}
