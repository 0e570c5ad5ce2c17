import { readTable, type Column, type TableRow } from "../../table/headerTable";
import { readEach } from "../../table/takeRows";
import { toAngle } from "../../units/angle";
import { InputError } from "../../units/errors";
import type { SpringbackTest } from "./springbackModel";

const COLUMNS: readonly Column[] = [
  { name: "Angle", required: true, also: ["Angle measured"] },
  { name: "Dial", also: ["Dial reached"] },
  { name: "Springback", zero: true },
];

/** More bends than anybody makes to measure a shoe. */
const MOST_TESTS = 1000;

const NO_SPRINGBACK =
  "Springback is 0 or empty; for a bend that did not spring back write the Dial reading, the same as its Angle.";

/**
 * Reads test bends from a range with a header row: Angle, and Dial or Springback [°].
 *
 * @throws InputError naming the row and what is wrong with it
 */
export function readSpringbackTests(range: unknown): SpringbackTest[] {
  return readEach(readTable(range, "tests", COLUMNS, MOST_TESTS).rows, "tests", readTest);
}

function readTest(row: TableRow): SpringbackTest {
  const angle = toAngle(row.get("Angle"), "Angle");
  const springback = row.get("Springback");
  const reached = row.get("Dial");
  if (springback === 0 && reached === null) throw new InputError(NO_SPRINGBACK);
  // Beside a dial reading, 0 is an empty cell.
  if (springback !== null && springback !== 0) {
    return { angle, springback: toAngle(springback, "Springback", { min: 0, max: 45 }) };
  }
  const dial = toAngle(reached, "Dial", { min: angle, max: angle + 45 });
  return { angle, springback: dial - angle };
}
