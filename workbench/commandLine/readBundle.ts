import { readFileSync } from "node:fs";
import { join } from "node:path";
import { type FunctionSet, type FunctionsMetadata, loadBundle } from "../engine";

/** The built worksheet functions, read from the folder that holds functions.js and functions.json. */
export function readBundle(folder: string, namespace = "CONDUIT"): FunctionSet {
  const metadata = JSON.parse(readFileSync(join(folder, "functions.json"), "utf8")) as FunctionsMetadata;
  return { namespace, metadata, implementations: loadBundle(readFileSync(join(folder, "functions.js"), "utf8")) };
}
