/** Codes the local page refuses with, as Excel spells them. */
export type OfficeErrorCode = `${Excel.ErrorCodes}` | "PropertyNotLoaded" | "InvalidRequestContext";

/** What Excel throws when it refuses: told apart by `code`. */
export class OfficeError
  extends Error
  implements Pick<OfficeExtension.Error, "name" | "message" | "code" | "debugInfo">
{
  override readonly name = "RichApi.Error";
  readonly debugInfo: Pick<OfficeExtension.DebugInfo, "code" | "message" | "errorLocation">;

  constructor(
    readonly code: OfficeErrorCode,
    message: string,
    errorLocation = "",
  ) {
    super(message);
    this.debugInfo = { code, message, errorLocation };
  }
}

/** Reading before `load` and `sync`. */
export const notLoaded = (property: string): OfficeError =>
  new OfficeError(
    "PropertyNotLoaded",
    `The property '${property}' is not available. Before reading the property's value, call the load method on the ` +
      `containing object and call "context.sync()" on the associated request context.`,
    property,
  );

export const notFound = (what: string): OfficeError =>
  new OfficeError("ItemNotFound", `The requested resource doesn't exist: ${what}.`);

export const invalidArgument = (why: string): OfficeError =>
  new OfficeError("InvalidArgument", `The argument is invalid or missing or has an incorrect format: ${why}`);

export const notImplemented = (what: string): OfficeError =>
  new OfficeError("NotImplemented", `The local page does not have ${what}.`);
