import { cornerFigure } from "../figures/corner";
import { HALF_EMT } from "../figures/scenes";
import type { Family, Figure } from "./types";

const corner = (angle: number): Figure => ({
  draw: () => cornerFigure(angle, HALF_EMT.radius, HALF_EMT.outsideDiameter),
  caption: "Everything is measured on the conduit's centerline. The dots are the corner and the ends of the arc.",
});

export const bends: Family = {
  file: "bends",
  title: "One bend",
  about: "Arc, setback and gain of a bend, and what springback does to it.",
  pages: {
    "BEND.ARC": {
      formula: ["arc = R · A · π/180°"],
      figure: corner(90),
      more: ['=CONDUIT.BEND.ARC(45,"4 1/2")'],
      refused: ["=CONDUIT.BEND.ARC(190,4)", "=CONDUIT.BEND.ARC(90,0)"],
    },
    "BEND.SETBACK": {
      formula: ["T = R · tan(A/2)"],
      figure: corner(45),
      more: ["=CONDUIT.BEND.SETBACK(90,4)"],
      refused: ["=CONDUIT.BEND.SETBACK(180,4)", '=CONDUIT.BEND.SETBACK("steep",4)'],
    },
    "BEND.GAIN": {
      formula: ["g = 2R · tan(A/2) − R · A · π/180°", "back to back: 2(R + OD/2) · tan(A/2) − R · A · π/180°"],
      figure: corner(90),
      more: ["=CONDUIT.BEND.GAIN(90,4,0.706)"],
      refused: ["=CONDUIT.BEND.GAIN(90,-4)", "=CONDUIT.BEND.GAIN(200,4)"],
    },
    "BEND.RADIUS": {
      formula: ["R = (edge²/4 + gap²) / (2 · gap) + OD/2"],
      more: ["=CONDUIT.BEND.RADIUS(6,1,0.706)", "=CONDUIT.BEND.RADIUS(24,2)"],
      refused: ["=CONDUIT.BEND.RADIUS(6,4)", "=CONDUIT.BEND.RADIUS(6,0)"],
    },
    "BEND.DIAL": {
      formula: ["reading = start + A + springback"],
      more: ["=CONDUIT.BEND.DIAL(90,5,-5)"],
      refused: ["=CONDUIT.BEND.DIAL(100,8)", "=CONDUIT.BEND.DIAL(90,50)"],
    },
    "BEND.RELEASED": {
      formula: ["R = tool radius · (A + springback) / A"],
      more: ["=CONDUIT.BEND.RELEASED(4,45,2.5)"],
      refused: ["=CONDUIT.BEND.RELEASED(4,90,50)", "=CONDUIT.BEND.RELEASED(0,90,5)"],
    },
    "BEND.SPRINGBACK": {
      formula: [
        "one test: springback = tested springback · A / tested angle",
        "two or more: springback = at zero + per degree · A, the line of least squares",
      ],
      more: ['=CONDUIT.BEND.SPRINGBACK(60,{"Angle","Dial";30,33;90,95})'],
      refused: [
        '=CONDUIT.BEND.SPRINGBACK(20,{"Angle","Dial";60,63;90,95})',
        '=CONDUIT.BEND.SPRINGBACK(45,{"Angle","Dial";90,80})',
      ],
    },
    "BEND.SPRINGBACK.MODEL": {
      formula: ["springback = at zero + per degree · A"],
      refused: [
        '=CONDUIT.BEND.SPRINGBACK.MODEL({"Angle";30})',
        '=CONDUIT.BEND.SPRINGBACK.MODEL({"Angle","Dial";90,80})',
      ],
    },
  },
};
