import type { Ctor, Injector } from "@univerjs/core";
import { type BaseFunction, type IFunctionNames, IFunctionService } from "@univerjs/engine-formula";
import type { Implementations } from "./customFunctions";
import { WorksheetFunction } from "./executor";
import type { DescribedFunctions, FunctionMetadata } from "./metadata";

/** The worksheet functions an engine runs: what functions.json describes, bodies from functions.js. */
export interface FunctionSet extends DescribedFunctions {
  implementations: Implementations;
}

/** Makes the functions known to an engine that calculates. */
export function registerFunctions(injector: Injector, functions: FunctionSet): void {
  const executors = functions.metadata.functions.map((entry) => executorOf(functions, entry));
  injector.get(IFunctionService).registerExecutors(...executors);
}

/** The same functions as an engine takes them before it starts. */
export function functionClasses(functions: FunctionSet): [Ctor<BaseFunction>, IFunctionNames][] {
  return functions.metadata.functions.map((entry) => {
    const made = executorOf(functions, entry);
    // An object that `new` is given back as it is.
    const make = function () {
      return made;
    } as unknown as Ctor<BaseFunction>;
    return [make, made.name];
  });
}

function executorOf({ namespace, implementations }: FunctionSet, entry: FunctionMetadata): WorksheetFunction {
  const body = implementations.get(entry.id.toUpperCase());
  if (!body) throw new Error(`functions.js associates nothing with ${entry.id}.`);
  return new WorksheetFunction(`${namespace}.${entry.name}`.toUpperCase(), entry, body);
}
