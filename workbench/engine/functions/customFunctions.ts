/** A worksheet function as the bundle hands it over. */
export type Implementation = (...args: unknown[]) => unknown;

/** Implementations by id, without the namespace: "OFFSET.SPACING". */
export type Implementations = ReadonlyMap<string, Implementation>;

/** The error a worksheet function throws or returns in a cell; `code` is what the cell shows. */
export class CellError extends Error {
  constructor(
    readonly code: string,
    message = "",
  ) {
    super(message);
    this.name = "CellError";
  }
}

/** The error codes a worksheet function can name, as Excel spells them. */
export const ErrorCode = {
  invalidValue: "#VALUE!",
  notAvailable: "#N/A",
  divisionByZero: "#DIV/0!",
  invalidNumber: "#NUM!",
  nullReference: "#NULL!",
  invalidName: "#NAME?",
  invalidReference: "#REF!",
} as const;

/** The `CustomFunctions` object a functions bundle expects, and what the bundle has associated with it so far. */
export function createRuntime() {
  const implementations = new Map<string, Implementation>();
  const associate = (first: string | Record<string, Implementation>, implementation?: Implementation): void => {
    const pairs = typeof first === "string" ? [[first, implementation] as const] : Object.entries(first);
    for (const [id, body] of pairs) if (body) implementations.set(id.toUpperCase(), body);
  };
  return { CustomFunctions: { Error: CellError, ErrorCode, associate }, implementations };
}

/**
 * Runs a functions bundle and collects what it associates. The bundle is given `CustomFunctions` and nothing else, so
 * a bundle that needs more than Excel's runtime object fails here.
 */
export function loadBundle(source: string): Implementations {
  const { CustomFunctions, implementations } = createRuntime();
  new Function("CustomFunctions", source)(CustomFunctions);
  return implementations;
}
