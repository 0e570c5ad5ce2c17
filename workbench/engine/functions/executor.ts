import { BaseFunction, type BaseValueObject } from "@univerjs/engine-formula";
import { type PlainArgument, plainRows } from "./arguments";
import { CellError, ErrorCode, type Implementation } from "./customFunctions";
import type { FunctionMetadata, ParameterMetadata } from "./metadata";
import { thrownToEngine, toEngine } from "./results";

/** An argument ready for the call: a single value, or rows for a parameter that takes a range. */
type Argument = PlainArgument | PlainArgument[][];

/**
 * One worksheet function inside the engine. It hands over arguments the way Excel does (ranges as rows, blanks and
 * omitted arguments as null, a range given for a single value worked through cell by cell) and never throws: an
 * exception here would stop every later calculation.
 */
export class WorksheetFunction extends BaseFunction {
  override needsReferenceObject = true;

  constructor(
    name: string,
    private readonly metadata: FunctionMetadata,
    private readonly implementation: Implementation,
  ) {
    super(name);
  }

  /** Keeps a text argument such as "3/8" from being read as a date. */
  override isArgumentsIgnoreNumberPattern(): boolean {
    return true;
  }

  override calculate(...given: BaseValueObject[]): BaseValueObject {
    try {
      return this.answer(given.map(plainRows));
    } catch (thrown) {
      return thrownToEngine(thrown);
    }
  }

  private answer(given: PlainArgument[][][]): BaseValueObject {
    this.checkCount(given.length);
    const parameters = given.map((_, index) => this.parameterAt(index));
    const lifted = given.filter(
      (rows, index) => !isMatrix(parameters[index]) && (rows.length > 1 || rows[0]!.length > 1),
    );
    const at = (row: number, column: number): Argument[] =>
      given.map((rows, index) => (isMatrix(parameters[index]) ? rows : pick(rows, row, column)));
    if (lifted.length === 0) return toEngine(this.call(at(0, 0)));

    const height = Math.max(...lifted.map((rows) => rows.length));
    const width = Math.max(...lifted.map((rows) => rows[0]!.length));
    return toEngine(
      Array.from({ length: height }, (_, row) =>
        Array.from({ length: width }, (_, column) => this.callForOneCell(at(row, column))),
      ),
    );
  }

  private call(values: Argument[]): unknown {
    for (const value of values) if (value instanceof CellError) throw value;
    const result = this.implementation(...this.grouped(values));
    if (result instanceof Promise) {
      result.catch(() => undefined);
      throw new CellError(ErrorCode.invalidValue, "This page runs only functions that answer at once.");
    }
    return result;
  }

  private callForOneCell(values: Argument[]): unknown {
    try {
      const result = this.call(values);
      return Array.isArray(result) ? (Array.isArray(result[0]) ? result[0][0] : result[0]) : result;
    } catch (thrown) {
      return thrown instanceof CellError ? thrown : new CellError(ErrorCode.invalidValue, String(thrown));
    }
  }

  /** One value for each parameter: null where nothing was given, a list for a repeating last parameter. */
  private grouped(values: Argument[]): unknown[] {
    return this.metadata.parameters.map((parameter, index) =>
      parameter.repeating ? values.slice(index) : (values[index] ?? null),
    );
  }

  private parameterAt(index: number): ParameterMetadata | undefined {
    const { parameters } = this.metadata;
    return parameters[Math.min(index, parameters.length - 1)];
  }

  private checkCount(count: number): void {
    const { parameters } = this.metadata;
    const required = parameters.filter((parameter) => !parameter.optional && !parameter.repeating);
    const most = parameters.some((parameter) => parameter.repeating) ? Infinity : parameters.length;
    if (count >= required.length && count <= most) return;
    const usage = parameters
      .map((parameter) => (parameter.optional ? `[${parameter.name}]` : parameter.name))
      .join(", ");
    throw new CellError(ErrorCode.invalidValue, `${this.name}(${usage}) was given ${count} arguments.`);
  }
}

function isMatrix(parameter: ParameterMetadata | undefined): boolean {
  return parameter?.dimensionality === "matrix";
}

/** The cell at a row and column; a single row or column stands for all of them. */
function pick(rows: PlainArgument[][], row: number, column: number): PlainArgument {
  const line = rows[rows.length === 1 ? 0 : row];
  const value = line?.[line.length === 1 ? 0 : column];
  return value === undefined ? new CellError(ErrorCode.notAvailable, "The ranges differ in size.") : value;
}
