import { BooleanNumber, type Injector } from "@univerjs/core";
import { FunctionType, type IFunctionInfo } from "@univerjs/engine-formula";
import { IDescriptionService } from "@univerjs/sheets-formula";
import type { DescribedFunctions, FunctionMetadata } from "./metadata";

/** Makes the functions known to a grid: the hints while typing. */
export function registerHints(injector: Injector, { namespace, metadata }: DescribedFunctions): void {
  injector.get(IDescriptionService).registerDescriptions(metadata.functions.map((entry) => describe(namespace, entry)));
}

/** What the grid shows while a formula is typed: the list entry and the hint for each argument. */
function describe(namespace: string, metadata: FunctionMetadata): IFunctionInfo {
  const description = metadata.description ?? "";
  return {
    functionName: `${namespace}.${metadata.name}`,
    functionType: FunctionType.User,
    description,
    abstract: firstSentence(description),
    functionParameter: metadata.parameters.map((parameter) => ({
      name: parameter.name,
      detail: parameter.description ?? "",
      example: "",
      require: parameter.optional ? BooleanNumber.FALSE : BooleanNumber.TRUE,
      repeat: parameter.repeating ? BooleanNumber.TRUE : BooleanNumber.FALSE,
    })),
  };
}

function firstSentence(text: string): string {
  return /^.*?\.(?=\s|$)/s.exec(text)?.[0] ?? text;
}
