/** The grammar of one step: which word takes what. The values themselves are read through {@link StepReaders}. */
import { DIRECTIONS, type Body, type Direction, type JointFitting, type Rise, type RouteStep } from "./types";

/** Angle of each bend of a box offset when none is given [°]: Modern Residential Wiring (2015), p. 91. */
const BOX_OFFSET_ANGLE = 5;
/** An offset or a kick of more than a right angle would run back on itself. */
const RIGHT_ANGLE = 90;

const DIRECTION = `(${DIRECTIONS.join("|")})`;

/** Reads the values that were matched; names the step and the value when one is wrong. Lengths [in], angles [°]. */
export interface StepReaders {
  length(text: string | undefined, what: string): number;
  coordinate(text: string | undefined, what: string): number;
  angle(text: string | undefined, what: string, max?: number): number;
  shots(text: string): number;
}

export interface StepForm {
  /** The words the step opens with. */
  opens: RegExp;
  whole: RegExp;
  /** What a person is told was expected. */
  expected: string;
  read(match: RegExpMatchArray, values: StepReaders): RouteStep;
}

const form = (opens: string, rest: string, expected: string, read: StepForm["read"]): StepForm => ({
  opens: new RegExp(`^${opens}`),
  whole: new RegExp(`^${opens}${rest}$`),
  expected,
  read,
});

/** @param over how the obstacle's width stands, one group; matches "" where there is none */
function saddleForm(opens: string, over: string, example: string): StepForm {
  return form(
    opens,
    `\\s*(\\S.*?)\\s*${DIRECTION}${over}\\s*at\\s*(\\S.*)`,
    `a height, its direction and an angle, as in ${example}`,
    (m, v) => ({
      kind: "saddle",
      height: v.length(m[1], "saddle height"),
      toward: m[2] as Direction,
      over: m[3] ? v.length(m[3], "obstacle width") : null,
      angle: v.angle(m[4], "angle", RIGHT_ANGLE),
    }),
  );
}

/** In this order: "box offset" before "box" and before "offset". */
export const STEP_FORMS: readonly StepForm[] = [
  form(
    DIRECTION,
    `\\s*(\\S.*?)(\\s*(?:to back|back[ -]to[ -]back))?`,
    `a direction and a length, as in up 4'`,
    (m, v) => {
      const leg = { kind: "leg", direction: m[1] as Direction, length: v.length(m[2], m[1]!) } as const;
      return m[3] ? { ...leg, back: true } : leg;
    },
  ),
  form(
    "stub",
    `(?:\\s*(\\S.*?)\\s*(up|down)|\\s+(up|down)\\s*(\\S.*))`,
    "a length to the back of the bend and up or down, as in stub 10 up",
    (m, v) => ({
      kind: "leg",
      direction: (m[2] ?? m[3]) as Direction,
      length: v.length(m[1] ?? m[4], "stub length"),
      back: true,
    }),
  ),
  form("ahead", `\\s*(\\S.*)`, "ahead and a length, as in ahead 24", (m, v) => ({
    kind: "ahead",
    length: v.length(m[1], "ahead"),
  })),
  form("bend", `\\s*(\\S.*?)\\s*${DIRECTION}`, "an angle and a direction to turn toward, as in bend 30 up", (m, v) => ({
    kind: "bend",
    angle: v.angle(m[1], "angle"),
    toward: m[2] as Direction,
  })),
  form("kick", `\\s*(\\S.*?)\\s*${DIRECTION}`, "an angle and a direction to turn toward, as in kick 20 up", (m, v) => ({
    kind: "bend",
    angle: v.angle(m[1], "kick angle", RIGHT_ANGLE),
    toward: m[2] as Direction,
  })),
  form(
    "box\\s*offset",
    `\\s*(\\S.*?)\\s*${DIRECTION}(?:\\s*at\\s*(\\S.*))?`,
    "a rise, its direction and an angle, as in box offset 1/2 up at 5",
    (m, v) => ({
      kind: "box offset",
      rise: readRise(m[1], m[2], v),
      angle: m[3] === undefined ? BOX_OFFSET_ANGLE : v.angle(m[3], "angle", RIGHT_ANGLE),
    }),
  ),
  form(
    "offset",
    `\\s*(\\S.*?)\\s*${DIRECTION}(?:\\s*(?:and\\s*)?(\\S.*?)\\s*${DIRECTION})?\\s*at\\s*(\\S.*)`,
    "a rise, its direction and an angle, as in offset 6 up at 30 or offset 8 up 12 east at 45",
    (m, v) => {
      const rises = [readRise(m[1], m[2], v)];
      if (m[3] !== undefined) rises.push(readRise(m[3], m[4], v));
      return { kind: "offset", rises, angle: v.angle(m[5], "angle", RIGHT_ANGLE) };
    },
  ),
  saddleForm("saddle", "(?:\\s*over\\s*(\\S.*?))?", "saddle 3 up at 45 or saddle 3 up over 12 at 30"),
  saddleForm("(?:3|three)[- ]*(?:point|bend)\\s*saddle", "()", "3-point saddle 3 up at 45"),
  saddleForm("(?:4|four)[- ]*(?:point|bend)\\s*saddle", "\\s*over\\s*(\\S.*?)", "4-point saddle 3 up over 12 at 30"),
  form(
    "sweep",
    `\\s*(\\S.*?)(?:\\s*in\\s*(\\d+)(?:\\s*shots?)?)?`,
    "a radius, as in sweep 24 or sweep 24 in 9",
    (m, v) => ({
      kind: "sweep",
      radius: v.length(m[1], "sweep radius"),
      shots: m[2] === undefined ? null : v.shots(m[2]),
    }),
  ),
  form("elbow", `(?:\\s*(\\S.*))?`, "elbow alone, or elbow and its radius, as in elbow 24", (m, v) => ({
    kind: "elbow",
    radius: m[1] === undefined ? null : v.length(m[1], "elbow radius"),
  })),
  form(
    "to",
    `\\s+(\\S+)\\s+(\\S+)\\s+(\\S+)`,
    "inches east, north and up of the datum, parted by spaces, as in to 100 0 -20",
    (m, v) => ({
      kind: "to",
      point: [v.coordinate(m[1], "east"), v.coordinate(m[2], "north"), v.coordinate(m[3], "up")],
    }),
  ),
  form("(lb|ll|lr|t|c|x)(?![a-z])", "", "a conduit body alone: LB, LL, LR, T, C or X", (m) => ({
    kind: "body",
    body: m[1]!.toUpperCase() as Body,
  })),
  form("(union|coupling|expansion)(?:\\s*fitting)?", "", "union, coupling or expansion alone", (m) => ({
    kind: "joint",
    fitting: m[1] as JointFitting,
  })),
  form(
    "(flex|liquidtight)",
    `\\s*(\\S.*?)\\s*(?:\\bto\\s+(\\S+)\\s+(\\S+)\\s+(\\S+)|${DIRECTION}\\s*(\\S.*?)(?:\\s*${DIRECTION}\\s*(\\S.*?))?(?:\\s*${DIRECTION}\\s*(\\S.*?))?)`,
    "a length and where it goes, as in flex 3' up 12 east 8 or flex 36 to 60 0 24",
    (m, v) => ({
      kind: "whip",
      flex: m[1] === "flex" ? "FMC" : "LFMC",
      length: v.length(m[2], "whip length"),
      point:
        m[3] === undefined ? null : [v.coordinate(m[3], "east"), v.coordinate(m[4], "north"), v.coordinate(m[5], "up")],
      moves: readMoves(m.slice(6, 12), v),
    }),
  ),
  form("box", "", "box alone, or box offset 1/2 up at 5", () => ({ kind: "box" })),
];

/** Each way and how far, as they stand in turn. */
const readMoves = (texts: readonly (string | undefined)[], values: StepReaders): Rise[] =>
  texts.flatMap((way, place) =>
    place % 2 === 1 || way === undefined
      ? []
      : [{ rise: values.length(texts[place + 1], way), toward: way as Direction }],
  );

const readRise = (length: string | undefined, toward: string | undefined, values: StepReaders): Rise => ({
  rise: values.length(length, "rise"),
  toward: toward as Direction,
});
