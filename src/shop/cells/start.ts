import type { Vec3 } from "../../geometry/vector";
import { InputError, quoteValue } from "../../units/errors";
import { toInches } from "../../units/length";

/** Farthest from the job's zero [in]: ten million feet, beyond which a unit was mistaken. */
const FARTHEST = 120_000_000;

const AXES = ["east", "north", "up"] as const;

/**
 * Where a run begins, from a cell: east, north and up of the job's zero.
 *
 * @param cell three lengths, parted by commas or semicolons, or by spaces where they are plain numbers
 * @returns the point [in]
 * @throws InputError for anything else
 * @example readStart("8' 4\", 0, 8'") //=> [100, 0, 96]
 */
export function readStart(cell: unknown): Vec3 {
  const text = typeof cell === "string" ? cell.trim() : "";
  const parts = text.split(/[,;]/.test(text) ? /[,;]/ : /\s+/);
  if (parts.length !== 3 || parts.includes("")) {
    throw new InputError(
      `Start must be three lengths, east, north and up of the job's zero, as in 100 0 96 or 8' 4", 0, 8'; got ${quoteValue(cell)}.`,
    );
  }
  const [east, north, up] = parts.map((part, axis) =>
    toInches(part.trim(), `Start, ${AXES[axis]},`, { min: -FARTHEST, max: FARTHEST }),
  );
  return [east!, north!, up!];
}

/** The point as such a cell, in inches. @example writeStart([100, 0, 96]) //=> "100 0 96" */
export const writeStart = (start: Vec3): string => start.map((value) => String(Number(value.toFixed(6)) + 0)).join(" ");
