import { ErrorCode } from "../../workbench/engine/functions/customFunctions";

/** A stand-in for the runtime object Excel provides, for tests that call the worksheet functions directly. */
class CellError extends Error {
  constructor(
    readonly code: string,
    message?: string,
  ) {
    super(message);
    this.name = "CustomFunctions.Error";
  }
}

const associated = new Map<string, unknown>();

Object.assign(globalThis, {
  CustomFunctions: {
    Error: CellError,
    ErrorCode,
    associate: (id: string, implementation: unknown) => associated.set(id, implementation),
  },
});

export { associated };
