import { bend } from "../figures/scenes";
import { sideBySide } from "../figures/sideBySide";
import type { Family, Figure } from "./types";

const sweep: Figure = {
  draw: () => bend({ kind: "sweep", radius: 24, shots: 9, angle: 90 }),
  caption: "A 90 on a radius of 24 in., made of nine small bends.",
};

export const sweeps: Family = {
  file: "sweeps",
  title: "Sweeps",
  about: "A large radius in many small bends, and groups that turn around one center.",
  pages: {
    "SWEEP.MARKS": {
      formula: [
        "angle of a shot = A / shots",
        "spacing = R · A · π/180° / shots; first mark = spacing / 2",
        "with the shoe's radius r: spacing = 2R · tan(θ/2) − gain of θ on r, with θ = A / shots",
      ],
      figure: sweep,
      more: ["=CONDUIT.SWEEP.MARKS(90,24,3,10,4)"],
      refused: ["=CONDUIT.SWEEP.MARKS(90,24,1)", "=CONDUIT.SWEEP.MARKS(90,24,9,0,30)"],
    },
    "SWEEP.ERROR": {
      formula: [
        "radius touched = (spacing + g) / (2 · tan(θ/2)), with θ = A / shots and the gain g of one shot",
        "bulge = (radius touched − r) · (1/cos(θ/2) − 1), with the shoe's radius r",
      ],
      figure: sweep,
      refused: ["=CONDUIT.SWEEP.ERROR(90,24,9,30)", "=CONDUIT.SWEEP.ERROR(90,24,200,4)"],
    },
    "SWEEP.PARALLEL": {
      formula: ["radius of conduit n = R + (n − 1) · spacing", "arc = radius · A · π/180°"],
      figure: {
        draw: () => {
          const neighbors = [0, 1, 2].map((place) => {
            const y = -place * 3;
            const corner = 24 + place * 3;
            return {
              corners: [
                [-6, y],
                [corner, y],
                [corner, 30],
              ] as const,
              radii: [corner],
            };
          });
          return sideBySide("Three conduits around one center", neighbors, 3, false);
        },
        caption: "Every conduit of the group turns around the same center.",
      },
      more: ["=CONDUIT.SWEEP.PARALLEL(24,3,2,45)"],
      refused: ["=CONDUIT.SWEEP.PARALLEL(24,3,0)", "=CONDUIT.SWEEP.PARALLEL(24,0,3)"],
    },
  },
};
