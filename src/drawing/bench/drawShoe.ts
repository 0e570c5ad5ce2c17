import { cos, sin, toRadians } from "../../geometry/angle";
import { samplePath } from "../../geometry/span";
import type { Vec3 } from "../../geometry/vector";
import { arrowLead, notchFromArrow, NOTCH_ANGLES, starFromArrow, type MarkedShoe } from "../../shop/shoe/shoe";
import type { ShowLength } from "../bend/bendDimensions";
import { drawConduit } from "../bend/conduit";
import { arrowhead, dimension } from "../paper/dimension";
import { fitTo, type Flat } from "../paper/fit";
import type { Scene, Spot } from "../paper/scene";
import { EDGE, Sketch } from "../paper/sketch";
import { textWidth } from "../paper/textBox";
import { lineUpSymbol, type LineUpSymbol } from "../paper/symbols";
import { sentence } from "../paper/words";

export type DrawnShoe = MarkedShoe;

export interface ShoeOptions {
  readonly name: string;
  /** Width of the page [px]; 320 when left out. */
  readonly width?: number;
  readonly show: ShowLength;
}

interface Feature {
  readonly symbol: LineUpSymbol;
  readonly name: string;
  readonly fromArrow: number;
}

/** What stands on the shoe, nearest the arrow first. */
function featuresOf(shoe: DrawnShoe): Feature[] {
  const notches = NOTCH_ANGLES.map((angle): Feature => {
    return { symbol: "notch", name: `${angle}° notch`, fromArrow: notchFromArrow(shoe, angle) };
  });
  const star: Feature = { symbol: "star", name: "star", fromArrow: starFromArrow(shoe) };
  return [...notches, star].sort((a, b) => a.fromArrow - b.fromArrow);
}

const featureWords = ({ name, fromArrow }: Pick<Feature, "name" | "fromArrow">, show: ShowLength): string =>
  `${name} ${show(fromArrow)}`;

/** From the arrow to the hook on the drawing [in]; where the hook is makes no difference to a mark. */
const HOOK_BEFORE = 2;
/** Half of it [in]. */
const HOOK_WIDTH = 0.3;
const ROW = 20;
const MARGIN = EDGE + 6;
/** From a symbol's arrowhead to its words. */
const SYMBOL_ROOM = 24;

/**
 * A shoe from the side, to scale: straight conduit in its hook with arrow, star and notches over it, the same conduit
 * bent to 90° in dashes, and each distance from the arrow along straight conduit.
 */
export function drawShoe(shoe: DrawnShoe, { name, width = 320, show }: ShoeOptions): Scene {
  const { radius } = shoe;
  const lead = arrowLead(shoe);
  const features = featuresOf(shoe);
  const sketch = new Sketch(width);
  const hook = -Math.max(lead, 0) - HOOK_BEFORE;
  const begin = hook - 1;
  const tip = Math.max(radius * 1.4, ...features.map(({ fromArrow }) => fromArrow - lead)) + 1;
  const straight: Flat[] = [
    [begin, 0],
    [tip, 0],
  ];
  const bent = bentConduit(radius, begin);
  const body = shoeOutline(shoe, hook);
  // Words of a row begin at its symbol: what they take of the page, the inches before it cannot.
  const forWords = features.map((each) => {
    const taken = SYMBOL_ROOM + textWidth(featureWords(each, show));
    return (width - 2 * MARGIN - taken) / (Math.max(0, each.fromArrow) - lead - begin);
  });
  const scale = Math.min((width - 2 * MARGIN) / (tip - begin), ...forWords);
  const fit = fitTo([...straight, ...body, ...bent], {
    left: MARGIN,
    right: MARGIN + (tip - begin) * scale,
    top: 60 + features.length * ROW,
    maxHeight: Infinity,
  });
  const diameter = shoe.outsideDiameter * fit.scale;
  sketch.line(body.map(fit.toPage), "shape", { closed: true });
  drawConduit(sketch, bent.map(fit.toPage), { diameter, style: "ghost", centerline: false });
  drawConduit(sketch, straight.map(fit.toPage), { diameter, broken: { end: true } });
  drawHook(sketch, fit.toPage([hook, 0]), diameter / 2, HOOK_WIDTH * fit.scale);
  const [center, rim] = [fit.toPage([0, -radius]), fit.toPage([radius * Math.SQRT1_2, radius * (Math.SQRT1_2 - 1)])];
  dimension(sketch, { from: center, to: rim, axis: "straight", at: 0, text: `R ${show(radius)}` });
  sketch.circle(center, 2, "solid");
  drawFeatures(sketch, features, fit.toPage([-lead, 0]), fit.scale, diameter / 2, show);
  const words = [
    sentence(`Radius ${show(radius)}, deduct ${show(shoe.deduct)}`),
    lead >= 0 ? `The bend starts ${show(lead)} past the arrow.` : `The bend starts ${show(-lead)} before the arrow.`,
  ];
  for (const line of words) sketch.paragraph(line);
  const list = features.map((each) => `${featureWords(each, show)} from the arrow`).join(", ");
  return sketch.finish(`Shoe for ${name}`, `${words.join(" ")} Along straight conduit: ${list}.`);
}

/** Conduit bent to 90° in the shoe: its centerline. */
function bentConduit(radius: number, begin: number): Flat[] {
  const points: Vec3[] = [
    [begin, 0, 0],
    [radius, 0, 0],
    [radius, -radius * 1.5, 0],
  ];
  return samplePath({ points, radii: [radius] }, 2).map(([x, y]): Flat => [x, y]);
}

/** The shoe's side: from under the hook round a little more than a right angle, and back to its hub. */
function shoeOutline({ radius, outsideDiameter }: DrawnShoe, hook: number): Flat[] {
  const groove = radius - outsideDiameter / 2;
  const arc = Array.from({ length: 51 }, (_, step): Flat => {
    const turn = toRadians((step * 100) / 50);
    return [groove * sin(turn), -radius + groove * cos(turn)];
  });
  const hub = radius * 0.25;
  return [
    [hook - HOOK_WIDTH, groove - radius],
    ...arc,
    [hub, -radius - hub],
    [-hub, -radius - hub],
    [hook - HOOK_WIDTH, groove - radius - radius * 0.25],
  ];
}

/** A hook that comes up from the shoe and holds the conduit down. */
function drawHook(sketch: Sketch, [x, y]: Spot, half: number, width: number): void {
  const top = y - half - 3;
  sketch.line(
    [
      [x - width, y + half],
      [x - width, top],
      [x + width, top],
    ],
    "shape",
    { width: 4 },
  );
  sketch.text("hook", [x, top - 11], "middle");
}

/** A row for each symbol, the farthest lowest, so that no line up to a row runs through the words of another. */
function drawFeatures(
  sketch: Sketch,
  features: readonly Feature[],
  arrow: Spot,
  scale: number,
  half: number,
  show: ShowLength,
): void {
  const level = arrow[1] - half - 14;
  const rise = (x: number, y: number): void => {
    sketch.line(
      [
        [x, arrow[1] - half - 4],
        [x, arrow[1] + half + 4],
      ],
      "mark",
    );
    sketch.line(
      [
        [x, arrow[1] - half - 4],
        [x, y],
      ],
      "extension",
    );
  };
  [...features].reverse().forEach(({ symbol, name, fromArrow }, index) => {
    const [x, y] = [arrow[0] + fromArrow * scale, level - ROW * (index + 1)];
    rise(x, y);
    sketch.line(
      [
        [arrow[0], y],
        [x, y],
      ],
      "dimension",
    );
    arrowhead(sketch, [x, y], [fromArrow < 0 ? 1 : -1, 0], 6);
    const words = featureWords({ name, fromArrow }, show);
    const after = Math.max(x, arrow[0]) + SYMBOL_ROOM / 2;
    lineUpSymbol(sketch, symbol, [after, y]);
    sketch.text(words, [after + SYMBOL_ROOM / 2, y], "start");
  });
  const top = level - ROW * (features.length + 1);
  rise(arrow[0], top + 8);
  lineUpSymbol(sketch, "arrow", [arrow[0], top]);
  sketch.text("arrow", [arrow[0] + 12, top], "start");
}
