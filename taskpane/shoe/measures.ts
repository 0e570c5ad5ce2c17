import { calibrate, type Calibrated } from "../../src/bends/testBends/calibrate";
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

export type MeasureKey = (typeof MEASURES)[number]["key"];
export type Texts = Readonly<Partial<Record<MeasureKey, string>>>;

/** Longest test piece [in]. */
const LONGEST = 240;

export interface Measured {
  /** What the test bend tells, when every field reads. */
  lines: readonly Calibrated[] | undefined;
  /** What is wrong with a field that has been filled in. */
  problems: Readonly<Partial<Record<MeasureKey, string>>>;
  /** What is wrong with the measures taken together. */
  problem: string;
  /** Fields that still want a number. */
  open: readonly MeasureKey[];
}

/** Reads the fields of a test bend and lets src/ work the shoe out. */
export function measure(texts: Texts, raceway: Raceway, size: TradeSize, typed: (text: string) => string): Measured {
  const values: Partial<Record<MeasureKey, number>> = {};
  const problems: Partial<Record<MeasureKey, string>> = {};
  for (const { key, label, kind } of MEASURES) {
    const text = texts[key] ?? "";
    if (text.trim() === "") continue;
    const read = attempt(() =>
      kind === "angle" ? toAngle(text, label) : toInches(typed(text), label, { above: 0, max: LONGEST }),
    );
    if (read.problem === undefined) values[key] = read.value;
    else problems[key] = read.problem;
  }
  const open = MEASURES.map(({ key }) => key).filter((key) => values[key] === undefined);
  if (open.length > 0) return { lines: undefined, problems, problem: "", open };
  const { dialReached, ...test } = values as Record<MeasureKey, number>;
  const result = attempt(() => calibrate(test, outsideDiameter(raceway, size), { dialReached }));
  return { lines: result.value, problems, problem: result.problem ?? "", open };
}
