import { CellFault } from "../../src/units/cellFault";
import { InputError, NotListedError } from "../../src/units/errors";
import { plainArgument } from "./plainValues";
import { refuseNoAnswer } from "./refuseNoAnswer";

/**
 * Runs a worksheet function's body on its arguments made plain, and turns the trade's errors into the ones a cell can
 * show with their message: InputError becomes `#VALUE!`, NotListedError `#N/A`. Anything else is a fault of ours and says
 * so. An argument that is an error itself is refused; one inside a range is left to whoever reads the range.
 */
export function answer<A extends unknown[], T>(args: readonly [...A], body: (...args: A) => T): T {
  try {
    const plain = args.map(plainArgument) as unknown[] as A;
    const fault = plain.findIndex((argument) => argument instanceof CellFault);
    if (fault >= 0) throw refused(plain[fault] as CellFault, fault + 1);
    const result = body(...plain);
    refuseNoAnswer(result);
    return result;
  } catch (error) {
    throw cellError(error);
  }
}

function refused({ code }: CellFault, place: number): InputError | NotListedError {
  const message = `argument ${place} holds the error ${code}.`;
  return code === "#N/A" ? new NotListedError(message) : new InputError(message);
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
