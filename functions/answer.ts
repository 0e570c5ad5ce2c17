import { InputError, NotListedError } from "../src/units/errors";

/**
 * Runs a worksheet function's body and turns the trade's errors into the ones a cell can show with their message:
 * InputError becomes `#VALUE!`, NotListedError `#N/A`. Anything else is a fault of ours and says so.
 */
export function answer<T>(body: () => T): T {
  try {
    const result = body();
    if (typeof result === "number" && !Number.isFinite(result)) {
      throw new InputError(`The result is not a finite number (${result}). Check the arguments.`);
    }
    return result;
  } catch (error) {
    throw cellError(error);
  }
}

function cellError(error: unknown): CustomFunctions.Error {
  if (error instanceof NotListedError) {
    return new CustomFunctions.Error(CustomFunctions.ErrorCode.notAvailable, error.message);
  }
  if (error instanceof InputError) {
    return new CustomFunctions.Error(CustomFunctions.ErrorCode.invalidValue, error.message);
  }
  const detail = error instanceof Error ? error.message : String(error);
  return new CustomFunctions.Error(
    CustomFunctions.ErrorCode.invalidValue,
    `Raceway Ledger could not compute this (internal fault: ${detail}).`,
  );
}
