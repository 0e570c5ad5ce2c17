import type { Injector } from "@univerjs/core";
import { IFunctionService } from "@univerjs/engine-formula";
import { IDescriptionService } from "@univerjs/sheets-formula";
import type { Implementations } from "./customFunctions";
import { WorksheetFunction } from "./executor";
import { describe, type FunctionsMetadata } from "./metadata";

/** The worksheet functions an engine runs: what functions.json describes, bodies from functions.js. */
export interface FunctionSet {
  namespace: string;
  metadata: FunctionsMetadata;
  implementations: Implementations;
}

/** Makes the functions known to the engine, for calculation and for the hints while typing. */
export function registerFunctions(injector: Injector, { namespace, metadata, implementations }: FunctionSet): void {
  const executors = metadata.functions.map((entry) => {
    const body = implementations.get(entry.id.toUpperCase());
    if (!body) throw new Error(`functions.js associates nothing with ${entry.id}.`);
    return new WorksheetFunction(`${namespace}.${entry.name}`.toUpperCase(), entry, body);
  });
  injector.get(IFunctionService).registerExecutors(...executors);
  injector.get(IDescriptionService).registerDescriptions(metadata.functions.map((entry) => describe(namespace, entry)));
}
