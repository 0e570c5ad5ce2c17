import { samplePath } from "../geometry/span";
import { arrowLead, notchFromArrow, NOTCH_ANGLES, starFromArrow, type Shoe } from "../shop/shoe";
import type { ShowLength } from "./bendDimensions";
import { drawConduit } from "./conduit";
import { arrowhead, dimension } from "./dimension";
import { fitTo, type Flat } from "./fit";
import type { Scene, Spot } from "./scene";
import { EDGE, Sketch } from "./sketch";
import { lineUpSymbol, type LineUpSymbol } from "./symbols";

export type DrawnShoe = Pick<Shoe, "radius" | "deduct" | "outsideDiameter">;

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

/** From the arrow to the hook on the drawing [in]; where the hook is makes no difference to a mark. */
const HOOK_BEFORE = 2;
/** Half of it [in]. */
const HOOK_WIDTH = 0.3;
const ROW = 20;

/**
 * A shoe from the side, to scale: straight conduit in its hook with arrow, star and notches over it, the same conduit
 * bent to 90° in dashes, and each distance from the arrow along straight conduit.
 */
export function drawShoe(shoe: DrawnShoe, { name, width = 320, show }: ShoeOptions): Scene {
  const { radius, outsideDiameter } = shoe;
  const lead = arrowLead(shoe);
  const features = featuresOf(shoe);
  const sketch = new Sketch(width);
  const hook = -Math.max(lead, 0) - HOOK_BEFORE;
  const tip = Math.max(radius * 1.4, ...features.map(({ fromArrow }) => fromArrow - lead)) + 1;
  const line: Flat[] = [
    [hook - 1, 0],
    [tip, 0],
  ];
  const bent = samplePath(
    {
      points: [
        [hook - 1, 0, 0],
        [radius, 0, 0],
        [radius, -radius * 1.5, 0],
      ],
      radii: [radius],
    },
    2,
  );
  const groove = radius - outsideDiameter / 2;
  const body = shoeOutline(radius, groove, hook);
  const top = 60 + features.length * ROW;
  const fit = fitTo([...line, ...body, ...bent.map(([x, y]): Flat => [x, y])], {
    left: EDGE + 6,
    right: width - EDGE - 6,
    top,
    maxHeight: width * 0.6,
  });
  const half = (outsideDiameter / 2) * fit.scale;
  sketch.line(body.map(fit.toPage), "shape", { closed: true });
  drawConduit(
    sketch,
    bent.map(([x, y]) => fit.toPage([x, y])),
    { diameter: 2 * half, style: "ghost", centerline: false },
  );
  drawConduit(sketch, line.map(fit.toPage), { diameter: 2 * half, broken: { end: true } });
  drawHook(sketch, fit.toPage([hook, 0]), half, HOOK_WIDTH * fit.scale);
  const [center, rim] = [fit.toPage([0, -radius]), fit.toPage([radius * Math.SQRT1_2, radius * (Math.SQRT1_2 - 1)])];
  dimension(sketch, { from: center, to: rim, axis: "straight", at: 0, text: `R ${show(radius)}` });
  sketch.circle(center, 2, "solid");
  drawFeatures(sketch, features, fit.toPage([-lead, 0]), fit.scale, half, show);
  const words = [
    `Radius ${show(radius)}, deduct ${show(shoe.deduct)}.`,
    lead >= 0 ? `The bend starts ${show(lead)} past the arrow.` : `The bend starts ${show(-lead)} before the arrow.`,
  ];
  for (const line of words) sketch.paragraph(line);
  const list = features.map((each) => `${each.name} ${show(each.fromArrow)} from the arrow`).join(", ");
  return sketch.finish(`Shoe for ${name}`, `${words.join(" ")} Along straight conduit: ${list}.`);
}

/** The shoe's side: from under the hook round a little more than a right angle, and back to its hub. */
function shoeOutline(radius: number, groove: number, hook: number): Flat[] {
  const arc = Array.from({ length: 51 }, (_, step): Flat => {
    const turn = (step * 100 * Math.PI) / (50 * 180);
    return [groove * Math.sin(turn), -radius + groove * Math.cos(turn)];
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
    const after = Math.max(x, arrow[0]) + 12;
    lineUpSymbol(sketch, symbol, [after, y]);
    sketch.text(`${name} ${show(fromArrow)}`, [after + 12, y], "start");
  });
  const top = level - ROW * (features.length + 1);
  rise(arrow[0], top + 8);
  lineUpSymbol(sketch, "arrow", [arrow[0], top]);
  sketch.text("arrow", [arrow[0] + 12, top], "start");
}
