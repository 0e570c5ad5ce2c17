import { setback } from "../../../src/geometry/arc";
import { kickedNinety } from "../figures/kickedNinety";
import { bend } from "../figures/scenes";
import { sideBySide } from "../figures/sideBySide";
import type { Family, Figure } from "./types";

const kick: Figure = {
  draw: () => bend({ kind: "kick", length: 24, angle: 30 }),
  caption: "A kick of 30° with 24 in. of conduit from its corner to the end.",
};

const ninety: Figure = {
  draw: () => kickedNinety(6, 30),
  caption: "Seen along the stub, which points at you: the kick moves the finished 90 aside by its rise.",
};

export const kicks: Family = {
  file: "kicks",
  title: "Kicks",
  about: "One bend of less than 90° that moves the end of the conduit aside.",
  pages: {
    "KICK.RISE": {
      formula: ["rise = R · (1 − cos A) + (length − R · A · π/180°) · sin A", "sharp corners: length · sin A"],
      figure: kick,
      more: ["=CONDUIT.KICK.RISE(24,30,4)", '=CONDUIT.KICK.RISE(24,30,"table")'],
      refused: ["=CONDUIT.KICK.RISE(1,45,4)", "=CONDUIT.KICK.RISE(24,95)"],
    },
    "KICK.LENGTH": {
      formula: ["the formula of KICK.RISE, solved for the length", "sharp corners: rise / sin A"],
      figure: kick,
      more: ["=CONDUIT.KICK.LENGTH(12,30,4)"],
      refused: ["=CONDUIT.KICK.LENGTH(0.5,60,4)", "=CONDUIT.KICK.LENGTH(0,30)"],
    },
    "KICK.ANGLE": {
      formula: ["the formula of KICK.RISE, solved for A", "sharp corners: A = arcsin(rise / length)"],
      figure: kick,
      more: ["=CONDUIT.KICK.ANGLE(24,12,4)"],
      refused: ["=CONDUIT.KICK.ANGLE(6,12)", "=CONDUIT.KICK.ANGLE(24,0)"],
    },
    "KICK.NINETY": {
      formula: [
        "distance = rise / sin A + T − g + OD/2, with setback T and gain g of the kick",
        "sharp corners: rise / sin A + OD/2",
      ],
      figure: ninety,
      more: ["=CONDUIT.KICK.NINETY(6,30,0.706,4)"],
      refused: ["=CONDUIT.KICK.NINETY(0,30,0.706)", "=CONDUIT.KICK.NINETY(6,30,0)"],
    },
    "KICK.PARALLEL": {
      formula: ["mark of conduit n = (n − 1) · spacing · tan(A/2)"],
      figure: {
        draw: () => {
          const neighbors = [0, 1, 2].map((place) => {
            const [x, y] = [place * setback(45, 6), -place * 6];
            const end = [x + 16, y + 16] as const;
            return { corners: [[-16, y], [x, y], end] as const, radii: [4] };
          });
          return sideBySide("Three parallel kicks", neighbors, 6, true);
        },
        caption: "Equal kicks stay evenly spaced when each next mark moves on by the stagger.",
      },
      refused: ["=CONDUIT.KICK.PARALLEL(45,6,0)", "=CONDUIT.KICK.PARALLEL(45,-6,3)"],
    },
  },
};
