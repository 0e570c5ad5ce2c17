// What the page's worker runs: the engine, and the bundle of worksheet functions that Excel loads.
import { createRuntime } from "../engine/functions/customFunctions";
import type { DescribedFunctions } from "../engine/functions/metadata";
import { calculateForPage } from "../engine/worker/workerSide";
import { keepResultsOnRequest } from "./results";

declare function importScripts(address: string): void;

const { CustomFunctions, implementations } = createRuntime();
Object.assign(globalThis, { CustomFunctions });
importScripts("../functions.js");

// The first message describes the functions; the rest is the engine's own talk.
addEventListener(
  "message",
  ({ data }: MessageEvent<DescribedFunctions>) =>
    keepResultsOnRequest(calculateForPage({ ...data, implementations }).__getInjector()),
  { once: true },
);
