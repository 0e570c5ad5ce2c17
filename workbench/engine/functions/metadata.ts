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

/** What functions.json describes, and what stands before each name in a cell. */
export interface DescribedFunctions {
  namespace: string;
  metadata: FunctionsMetadata;
}
