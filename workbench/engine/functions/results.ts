import {
  ArrayValueObject,
  type BaseValueObject,
  BooleanValueObject,
  ErrorValueObject,
  NumberValueObject,
  StringValueObject,
} from "@univerjs/engine-formula";
import { CellError, ErrorCode } from "./customFunctions";
import { isErrorCode } from "../cellValue";

/** Excel's longest text in one cell [characters]. */
const longestText = 32767;

/** What a worksheet function returned, as the engine's value: text stays text, numbers stay exact, tables spill. */
export function toEngine(result: unknown): BaseValueObject {
  if (!Array.isArray(result)) return single(result);
  const rows = result.map((row: unknown) => (Array.isArray(row) ? (row as unknown[]) : [row]));
  const width = Math.max(0, ...rows.map((row) => row.length));
  if (width === 0) return engineError(ErrorCode.invalidValue, "The function returned an empty table.");
  if (rows.length === 1 && width === 1) return single(rows[0]![0]);
  return ArrayValueObject.create({
    calculateValueList: rows.map((row) =>
      Array.from({ length: width }, (_, column) =>
        column < row.length ? single(row[column]) : engineError(ErrorCode.notAvailable, "This row is shorter."),
      ),
    ),
    rowCount: rows.length,
    columnCount: width,
    unitId: "",
    sheetId: "",
    row: -1,
    column: -1,
  });
}

/** An error value that carries its message into the cell. */
export function engineError(code: string, message: string): BaseValueObject {
  const known = isErrorCode(code) ? code : ErrorCode.invalidValue;
  // Not ErrorValueObject.create: that one shares instances, and a shared instance would share its message.
  return new ErrorValueObject(known as ConstructorParameters<typeof ErrorValueObject>[0]).withCustomData({ message });
}

/** The engine's value of anything thrown. */
export function thrownToEngine(thrown: unknown): BaseValueObject {
  if (thrown instanceof CellError) return engineError(thrown.code, thrown.message);
  return engineError(
    ErrorCode.invalidValue,
    `The function failed: ${thrown instanceof Error ? thrown.message : String(thrown)}`,
  );
}

function single(value: unknown): BaseValueObject {
  switch (typeof value) {
    case "number":
      if (Number.isFinite(value)) return NumberValueObject.create(value);
      return engineError(ErrorCode.invalidNumber, `The function returned ${value}.`);
    case "string":
      if (value.length <= longestText) return StringValueObject.create(value);
      return engineError(
        ErrorCode.invalidValue,
        `The text is ${value.length} characters long; a cell holds ${longestText}.`,
      );
    case "boolean":
      return BooleanValueObject.create(value);
  }
  // Excel shows 0 where a function returns nothing; so does this page, to show what Excel will show.
  if (value == null) return NumberValueObject.create(0);
  if (value instanceof CellError) return engineError(value.code, value.message);
  return engineError(ErrorCode.invalidValue, "The function returned something a cell cannot hold.");
}
