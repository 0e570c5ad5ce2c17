import { run, stick } from "../figures/scenes";
import type { Family, Figure } from "./types";

const ROUTE = "up 36, east 60, offset 6 up at 30, ahead 40";

/** Two 90s and a leg longer than a stick. */
const ELBOWS = "up 24, east 160, up 24";

const whole: Figure = {
  draw: () => run(ROUTE, "isometric"),
  caption: `The run "${ROUTE}" in 1/2 EMT.`,
};

const wrongStep = (id: string): string[] => [
  `=CONDUIT.${id}("up 36, sideways 60","EMT","1/2")`,
  `=CONDUIT.${id}("up 3, east 2","EMT","1/2")`,
];

export const runs: Family = {
  file: "runs",
  title: "One run",
  about: "Everything that follows from one route text.",
  pages: {
    "RUN.LENGTH": {
      formula: ["developed length = sum of the legs − sum of the gains, g = 2R · tan(A/2) − R · A · π/180°"],
      figure: { draw: () => run("up 36, east 60", "elevation"), caption: 'The run "up 36, east 60" in 1/2 EMT.' },
      more: [
        `=CONDUIT.RUN.LENGTH("up 3', east 5'","EMT","1/2",Shoes[#All])`,
        '=CONDUIT.RUN.LENGTH("up 36, east 60","PVC 40","1/2")',
      ],
      refused: wrongStep("RUN.LENGTH"),
    },
    "RUN.BENDS": {
      figure: whole,
      more: ['=CONDUIT.RUN.BENDS("up 36, east 60","PVC 40","1/2")'],
      refused: wrongStep("RUN.BENDS"),
    },
    "RUN.DEGREES": {
      formula: ["degrees = sum of the bends of a pull; the largest of the pulls"],
      figure: {
        draw: () => run("up 36, east 60, down 36", "elevation"),
        caption: 'The run "up 36, east 60, down 36": two 90s between its boxes.',
      },
      more: ['=CONDUIT.RUN.DEGREES("up 36, east 60, box, south 48, down 36","EMT","1/2")'],
      refused: wrongStep("RUN.DEGREES"),
    },
    "RUN.CHECK": {
      more: [
        '=CONDUIT.RUN.CHECK("up 36, east 90, south 80, east 70, up 60, west 50","EMT","1/2")',
        '=CONDUIT.RUN.CHECK("up 3, east 2","EMT","1/2")',
      ],
      refused: ['=CONDUIT.RUN.CHECK("up 36, east 60","copper","1/2")', '=CONDUIT.RUN.CHECK("","EMT","1/2")'],
    },
    "RUN.POINTS": {
      figure: { draw: () => run("up 36, east 60", "isometric"), caption: 'The run "up 36, east 60".' },
      refused: wrongStep("RUN.POINTS"),
    },
    "RUN.MARKS": {
      figure: { draw: () => stick(ROUTE), caption: `First piece of "${ROUTE}", before it is bent.` },
      more: [`=CONDUIT.RUN.MARKS("${ROUTE}","EMT","1/2")`, `=CONDUIT.RUN.MARKS("${ELBOWS}","PVC 40","2")`],
      refused: wrongStep("RUN.MARKS"),
    },
  },
};
