import { FORMULA_REF_TO_ARRAY_CACHE } from "@univerjs/engine-formula";

/**
 * The engine keeps what it read of a formula under a number worked out from its letters, one by one, each time it looks
 * for it: every formula in every calculation. Under the text itself it is found faster, and two texts of the same
 * number are not taken for each other.
 */
export function keepFormulasByText(): void {
  const kept = Object.getPrototypeOf(FORMULA_REF_TO_ARRAY_CACHE) as { _hash(text: string): string };
  kept._hash = (text) => text;
}
