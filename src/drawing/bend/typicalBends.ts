import type { BendDrawing } from "./bendShapes";

const CONDUIT = { radius: 4, outsideDiameter: 0.706 };

/** A plain example of each kind of bend, for choosing between them by their pictures. Steeper than most work, to be seen. */
export const TYPICAL_BENDS: readonly BendDrawing[] = (
  [
    { kind: "stub-up", stub: 14 },
    { kind: "back-to-back", distance: 24, stub: 14 },
    { kind: "kick", length: 16, angle: 40 },
    { kind: "offset", rise: 10, angle: 45 },
    { kind: "box offset", rise: 1.5, angle: 20 },
    { kind: "rolling offset", rise: 6, roll: 8, angle: 45 },
    { kind: "three-bend saddle", height: 7, angle: 90 },
    { kind: "four-bend saddle", height: 7, over: 10, angle: 60 },
    { kind: "sweep", radius: 24, shots: 5, angle: 90 },
  ] as const
).map((shape) => ({ ...CONDUIT, shape }));
