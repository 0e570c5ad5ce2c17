import type { Vec3 } from "../../geometry/vector";
import type { Path } from "../../geometry/path";

/** What is at an end of a stretch of conduit. */
export type RunEnd = "box" | "coupling" | "body" | "open";

/** A stretch of conduit, box to box, or a single piece. */
export interface RunPull {
  readonly path: Path;
  /** Distances along the conduit from its datum end [in]. */
  readonly couplings?: readonly number[];
  readonly straps?: readonly number[];
  /** Places of the bends that are factory elbows, 0 for the first bend of the stretch. */
  readonly elbows?: readonly number[];
  /** Boxes when left out. */
  readonly start?: RunEnd;
  readonly end?: RunEnd;
}

export interface RunDrawing {
  readonly name: string;
  readonly pulls: readonly RunPull[];
  /** The other conduits of a rack. */
  readonly beside?: readonly Path[];
  /** Flexible pieces, from end to end [in]. */
  readonly whips?: readonly { readonly from: Vec3; readonly to: Vec3 }[];
  /** [in] */
  readonly outsideDiameter: number;
}
