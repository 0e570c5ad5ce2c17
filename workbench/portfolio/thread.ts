/** One thread of the portfolio: it is sent names of files, one at a time, and answers with what came of each. */
import { createHash } from "node:crypto";
import { readFileSync } from "node:fs";
import { parentPort, workerData } from "node:worker_threads";
import { readBundle } from "../commandLine/readBundle";
import { readJob } from "./readJob";
import type { Answer } from "./threads";

const functions = readBundle((workerData as { bundle: string }).bundle);

async function answer(file: string): Promise<Answer> {
  let hash = "";
  try {
    const bytes = readFileSync(file);
    hash = createHash("sha256").update(bytes).digest("hex");
    return { hash, reading: await readJob(new Uint8Array(bytes), functions) };
  } catch (error) {
    return { hash, problem: error instanceof Error ? error.message : String(error) };
  }
}

parentPort?.on("message", (file: string) => void answer(file).then((answered) => parentPort?.postMessage(answered)));
