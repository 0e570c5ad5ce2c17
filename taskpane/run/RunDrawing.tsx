import type { BuiltRun } from "../../src/shop/buildRun";

export function RunDrawing(_: { built: BuiltRun }) {
  return null;
}
