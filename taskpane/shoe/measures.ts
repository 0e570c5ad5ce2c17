import { calibrate, type Calibrated } from "../../src/bends/testBends/calibrate";
import { springbackAt, springbackModel } from "../../src/bends/testBends/springbackModel";
import { readSecondTest, secondTestCell } from "../../src/shop/shoe/secondTest";
import { testBendDoubts } from "../../src/shop/shoe/testBendAdvice";
import { outsideDiameter } from "../../src/raceway/dimensions";
import type { Raceway } from "../../src/raceway/raceway";
import type { TradeSize } from "../../src/raceway/tradeSize";
import { toAngle } from "../../src/units/angle";
import { toInches } from "../../src/units/length";
import { attempt } from "../components/attempt";
import { strings } from "../strings";

const t = strings.shoe.fields;

/** What is measured on a test bend, in the order it is done. */
export const MEASURES = [
  { key: "cutLength", label: t.cutLength, kind: "length" },
  { key: "mark", label: t.mark, kind: "length" },
  { key: "dialReached", label: t.dialReached, kind: "angle" },
  { key: "angle", label: t.angle, kind: "angle" },
  { key: "stub", label: t.stub, kind: "length" },
  { key: "leg", label: t.leg, kind: "length" },
] as const;

/** A second bend at another angle: both or neither. */
export const SECOND = [
  { key: "secondDial", label: t.secondDial, kind: "angle" },
  { key: "secondAngle", label: t.secondAngle, kind: "angle" },
] as const;

type FirstKey = (typeof MEASURES)[number]["key"];
export type MeasureKey = FirstKey | (typeof SECOND)[number]["key"];
export type Texts = Readonly<Partial<Record<MeasureKey, string>>>;

/** Longest test piece [in]. */
const LONGEST = 240;

export interface Measured {
  /** What the test bend tells, when every field reads. */
  lines: readonly Calibrated[] | undefined;
  /** The springback it comes to, when they do. */
  springback: MeasuredSpringback | undefined;
  /** What speaks against the measures. */
  doubts: readonly string[];
  /** What is wrong with a field that has been filled in. */
  problems: Readonly<Partial<Record<MeasureKey, string>>>;
  /** What is wrong with the measures taken together. */
  problem: string;
  /** Fields that still want a number. */
  open: readonly MeasureKey[];
}

/** Springback of a 90 by the test bends [°], and the second of them as the Shoes table holds it. */
export interface MeasuredSpringback {
  at90: number;
  secondTest: string;
}

/** A test 90 settles near it [°]. */
const NEAR_90 = { min: 80, max: 100 };

/** Reads the fields of a test bend and lets src/ work the shoe out. */
export function measure(texts: Texts, raceway: Raceway, size: TradeSize, typed: (text: string) => string): Measured {
  const values: Partial<Record<MeasureKey, number>> = {};
  const problems: Partial<Record<MeasureKey, string>> = {};
  for (const { key, label, kind } of [...MEASURES, ...SECOND]) {
    const text = texts[key] ?? "";
    if (text.trim() === "") continue;
    const read = attempt(() =>
      kind === "angle"
        ? toAngle(text, label, key === "angle" ? NEAR_90 : undefined)
        : toInches(typed(text), label, { above: 0, max: LONGEST }),
    );
    if (read.problem === undefined) values[key] = read.value;
    else problems[key] = read.problem;
  }
  const second = SECOND.some(({ key }) => (texts[key] ?? "").trim() !== "");
  const wanted: readonly MeasureKey[] = [...MEASURES, ...(second ? SECOND : [])].map(({ key }) => key);
  const open = wanted.filter((key) => values[key] === undefined);
  const nothing = { lines: undefined, springback: undefined, doubts: [], problems, open };
  if (open.length > 0) return { ...nothing, problem: "" };
  const { dialReached, secondDial, secondAngle, ...test } = values as Record<MeasureKey, number>;
  const result = attempt(() => {
    const lines = calibrate(test, outsideDiameter(raceway, size), { dialReached });
    const first = { angle: test.angle, springback: dialReached - test.angle };
    const other = second ? readSecondTest(secondTestCell(secondAngle, secondDial)) : undefined;
    const at90 = springbackAt(springbackModel([first, ...(other ? [other] : [])]), 90);
    return { lines, springback: { at90, secondTest: second ? secondTestCell(secondAngle, secondDial) : "" } };
  });
  if (!result.value) return { ...nothing, problem: result.problem ?? "" };
  return {
    ...nothing,
    ...result.value,
    doubts: testBendDoubts(result.value.lines, test.angle, raceway, size),
    problem: "",
  };
}
