import type { BendShape } from "../../src/drawing/bend/bendShapes";
import { strings } from "../strings";

/** A dimension the person gives for a bend. */
export interface BendField {
  key: string;
  label: string;
  hint?: string;
  kind: "length" | "angle" | "count";
  /** What stands in the field at first, as people say it. */
  first: string;
}

/** A worksheet formula beside its label; `{name}` stands for the cell of a field, `{radius}` for the shoe's. */
export interface BendResult {
  label: string;
  formula: string;
}

export type Values = Readonly<Record<string, number>>;

/** A kind of bend as the pane offers it. */
export interface BendChoice {
  id: BendShape["kind"];
  title: string;
  fields: readonly BendField[];
  shape(values: Values): BendShape;
  /** Steps of the route; `{name}` stands for the value of a field. The first `lead` of them only lead up to the bend. */
  steps: readonly string[];
  lead: number;
  results: readonly BendResult[];
}

const t = strings.bend.fields;

const length = (key: string, label: string, first: string, hint?: string): BendField => ({
  key,
  label,
  kind: "length",
  first,
  ...(hint ? { hint } : {}),
});
const angle = (first: string, label = t.angle): BendField => ({ key: "angle", label, kind: "angle", first });

const lead = length("lead", t.lead, `3'`);
const tail = length("tail", t.tail, `3'`);
const center = length("lead", t.center, `4'`);

const r = strings.bend.results;
const spacing = (call: string): BendResult[] => [
  { label: r.spacing, formula: `=CONDUIT.${call},{radius})` },
  { label: r.handbook, formula: `=CONDUIT.${call})` },
  { label: r.difference, formula: `=CONDUIT.${call})-CONDUIT.${call},{radius})` },
];
const offsetResults: BendResult[] = [
  ...spacing("OFFSET.SPACING({rise},{angle}"),
  { label: r.shrink, formula: "=CONDUIT.OFFSET.SHRINK({rise},{angle},{radius})" },
];
const saddleResults: BendResult[] = [
  ...spacing("SADDLE.SPACING({height},{angle}"),
  { label: r.shrink, formula: "=CONDUIT.SADDLE.SHRINK({height},{angle},{radius})" },
];

export const BEND_KINDS: readonly BendChoice[] = [
  {
    id: "stub-up",
    title: strings.bend.kinds["stub-up"],
    fields: [length("stub", t.stub, `10`), length("leg", t.leg, `3'`)],
    shape: ({ stub = 0 }) => ({ kind: "stub-up", stub }),
    steps: ["up {stub} to back", "east {leg}"],
    lead: 0,
    results: [{ label: r.arc, formula: "=CONDUIT.BEND.ARC(90,{radius})" }],
  },
  {
    id: "back-to-back",
    title: strings.bend.kinds["back-to-back"],
    fields: [length("stub", t.stubs, `10`), length("distance", t.backs, `2' 6"`)],
    shape: ({ stub = 0, distance = 0 }) => ({ kind: "back-to-back", stub, distance }),
    steps: ["up {stub} to back", "east {distance} to back", "down {stub} to back"],
    lead: 0,
    results: [{ label: r.arc, formula: "=CONDUIT.BEND.ARC(90,{radius})" }],
  },
  {
    id: "kick",
    title: strings.bend.kinds.kick,
    fields: [length("length", t.kick, `2'`), angle("20"), lead],
    shape: ({ length: size = 0, angle: turn = 0 }) => ({ kind: "kick", length: size, angle: turn }),
    steps: ["east {lead}", "bend {angle} up", "ahead {length}"],
    lead: 1,
    results: [{ label: r.rise, formula: "=CONDUIT.KICK.RISE({length},{angle})" }],
  },
  {
    id: "offset",
    title: strings.bend.kinds.offset,
    fields: [length("rise", t.rise, `6`), angle("30"), lead, tail],
    shape: ({ rise = 0, angle: turn = 0 }) => ({ kind: "offset", rise, angle: turn }),
    steps: ["east {lead}", "offset {rise} up at {angle}", "ahead {tail}"],
    lead: 1,
    results: offsetResults,
  },
  {
    id: "rolling offset",
    title: strings.bend.kinds["rolling offset"],
    fields: [length("rise", t.rise, `8`), length("roll", t.roll, `12`), angle("45"), lead, tail],
    shape: ({ rise = 0, roll = 0, angle: turn = 0 }) => ({ kind: "rolling offset", rise, roll, angle: turn }),
    steps: ["east {lead}", "offset {rise} up {roll} north at {angle}", "ahead {tail}"],
    lead: 1,
    results: spacing("OFFSET.SPACING(SQRT({rise}^2+{roll}^2),{angle}"),
  },
  {
    id: "box offset",
    title: strings.bend.kinds["box offset"],
    fields: [length("rise", t.boxRise, `1/2`), angle("5"), length("lead", t.lead, `4`), tail],
    shape: ({ rise = 0, angle: turn = 0 }) => ({ kind: "box offset", rise, angle: turn }),
    steps: ["east {lead}", "box offset {rise} up at {angle}", "ahead {tail}"],
    lead: 1,
    results: offsetResults,
  },
  {
    id: "three-bend saddle",
    title: strings.bend.kinds["three-bend saddle"],
    fields: [length("height", t.height, `3`), angle("45", t.centerAngle), center, length("tail", t.centerTail, `4'`)],
    shape: ({ height = 0, angle: turn = 0 }) => ({ kind: "three-bend saddle", height, angle: turn }),
    steps: ["east {lead}", "saddle {height} up at {angle}", "ahead {tail}"],
    lead: 1,
    results: saddleResults,
  },
  {
    id: "four-bend saddle",
    title: strings.bend.kinds["four-bend saddle"],
    fields: [
      length("height", t.height, `4`),
      length("over", t.over, `12`),
      angle("30"),
      center,
      length("tail", t.centerTail, `4'`),
    ],
    shape: ({ height = 0, over = 0, angle: turn = 0 }) => ({ kind: "four-bend saddle", height, over, angle: turn }),
    steps: ["east {lead}", "saddle {height} up over {over} at {angle}", "ahead {tail}"],
    lead: 1,
    results: spacing("OFFSET.SPACING({height},{angle}"),
  },
  {
    id: "sweep",
    title: strings.bend.kinds.sweep,
    fields: [
      length("radius", t.sweepRadius, `24`),
      { key: "shots", label: t.shots, kind: "count", first: "9" },
      angle("90"),
      length("lead", t.corner, `4'`),
      length("tail", t.cornerTail, `4'`),
    ],
    shape: ({ radius = 0, shots = 0, angle: turn = 0 }) => ({ kind: "sweep", radius, shots, angle: turn }),
    steps: ["east {lead}", "sweep {radius} in {shots} shots", "bend {angle} up", "ahead {tail}"],
    lead: 1,
    results: [{ label: r.sweepArc, formula: "=CONDUIT.BEND.ARC({angle},{radius})" }],
  },
];
