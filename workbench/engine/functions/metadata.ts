import { BooleanNumber } from "@univerjs/core";
import { FunctionType, type IFunctionInfo } from "@univerjs/engine-formula";

/** One argument as functions.json describes it. */
export interface ParameterMetadata {
  name: string;
  description?: string;
  type?: string;
  dimensionality?: string;
  optional?: boolean;
  repeating?: boolean;
}

/** One worksheet function as functions.json describes it. */
export interface FunctionMetadata {
  id: string;
  name: string;
  description?: string;
  helpUrl?: string;
  parameters: ParameterMetadata[];
  result?: { type?: string; dimensionality?: string };
}

/** The whole of functions.json. */
export interface FunctionsMetadata {
  functions: FunctionMetadata[];
  allowCustomDataForDataTypeAny?: boolean;
}

/** What the grid shows while a formula is typed: the list entry and the hint for each argument. */
export function describe(namespace: string, metadata: FunctionMetadata): IFunctionInfo {
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
