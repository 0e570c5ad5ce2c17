/** Schedule rows for one piece of 1/2 EMT as in the trade's examples, and the bench that bends them. */
import type { BenchShoe } from "./bench";
import { bendAgain, type BentPull } from "./bendAgain";
import type { Row } from "./readRows";

export const SHOE: BenchShoe = { radius: 4, deduct: 5, outsideDiameter: 0.706 };
export const HALF_OD = 0.353;
/** Exact paths [in]. */
export const EXACT = 1e-9;

export interface RowStroke {
  mark: number;
  lineUp?: string;
  hook?: string;
  angle?: number;
  plane?: number;
}

export const piece = (cut: number, strokes: RowStroke[], number = 1): Row[] => {
  const common = { Run: "A-1", Piece: number, "Cut length": cut };
  if (strokes.length === 0) return [{ ...common, Bend: "", Mark: "", "Line up": "", Hook: "", Angle: "", Plane: "" }];
  return strokes.map(({ mark, lineUp = "arrow", hook = "datum", angle = 90, plane = 0 }, index) => ({
    ...common,
    Bend: index + 1,
    Mark: mark,
    "Line up": lineUp,
    Hook: hook,
    Angle: angle,
    Plane: plane,
  }));
};

/** The one pull that the rows come to. */
export const bend = (rows: Row[], shoe = SHOE): BentPull => {
  const pulls = bendAgain(rows, shoe);
  expect(pulls).toHaveLength(1);
  return pulls[0]!;
};
