import { shoe } from "../figures/scenes";
import type { Family } from "./types";

export const testBends: Family = {
  file: "testBends",
  title: "Your own shoe",
  about: "One test 90 tells what no table can: the shoe in your shop.",
  pages: {
    "SHOE.CALIBRATE": {
      formula: [
        "deduct = stub − mark",
        "back gain = stub + leg − cut length",
        "R = (back gain − OD) / (2 − π/2), for a bend of exactly 90°",
        "springback = dial reached − angle measured",
      ],
      figure: {
        draw: shoe,
        caption: "What the numbers mean on the shoe: distances run along straight conduit from the arrow.",
      },
      refused: [
        "=CONDUIT.SHOE.CALIBRATE(30,5,10,19,0.706,95,90)",
        "=CONDUIT.SHOE.CALIBRATE(30,5,10,22.4228,0.706,95,45)",
      ],
    },
  },
};
