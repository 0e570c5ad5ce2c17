import { toDegrees } from "../geometry/angle";
import { cornerHeight, gain } from "../geometry/arc";
import { add, angleBetween, norm, subtract } from "../geometry/vector";
import { placedPulls } from "../shop/run/placed";
import { writeRoute } from "../route/text/writeRoute";
import type { RadiusAt, RouteStep } from "../route/text/types";
import type { Raceway } from "../raceway/raceway";
import type { TradeSize } from "../raceway/tradeSize";
import type { FittingRule } from "../shop/fittings/fittingRule";
import { elbowShoe, fittingsOf, isBought } from "../shop/fittings/factoryElbows";
import { buildRunWith } from "../shop/run/buildRun";
import type { BuiltRun } from "../shop/run/builtRun";
import { runLength } from "../shop/run/runTotals";
import { readRuns } from "../shop/run/runsTable";
import { writeStart } from "../shop/cells/start";
import type { ShoeBook } from "../shop/shoe/shoeBook";
import { radiusOf } from "../shop/shoe/springback";
import { InputError, isUserError } from "../units/errors";
import { formatLength } from "../units/length";
import { naturalOrder } from "../units/names/naturalOrder";
import { compare, type Farthest } from "./check/compare";
import type { Drawing, NotRead } from "./file/drawing";
import { chainLines, type DrawnRun } from "./fit/chain";
import { fitCorners, type Corners } from "./fit/fitCorners";
import { conduitOf, type LayerPlan } from "./layers";
import { turnedBy, turnOf } from "./turn";
import { writeSteps } from "./words/writeSteps";

/** A run of a drawing as a row of Runs, measured against what is drawn. */
export interface DrawnRow {
  readonly run: string;
  readonly raceway: Raceway;
  readonly size: TradeSize;
  /** Empty where it is not taken. */
  readonly route: string;
  readonly start: string;
  /** Along the drawn line, and along the conduit as it will be made [in]. */
  readonly drawnLength: number;
  readonly writtenLength?: number;
  readonly farthest?: Farthest;
  readonly taken: boolean;
  /** As drawn, how far off and where, or why it is not taken. */
  readonly words: string;
  /** Bends drawn wider or narrower than they are made, in words, and how far beside the drawn ones that puts them [in]. */
  readonly note: string;
  readonly bendsOff: number;
}

export interface DrawnRows {
  readonly rows: readonly DrawnRow[];
  readonly notRead: readonly NotRead[];
  /** How far the drawing was turned to lie to north [°]; 0 mostly. */
  readonly turned: number;
}

/** What a drawing is read with. */
export interface Reading {
  /** Inches in a drawing unit. */
  readonly unit: number;
  readonly layers: readonly LayerPlan[];
  readonly shoes: ShoeBook;
  readonly fittings: FittingRule;
}

/** Whole inches and feet are rounded no more than this [in]: they are meant. */
const COARSEST = 1 / 32;
/** No farther off than this [in] is as drawn; farther than that is not taken. */
const [AS_DRAWN, TOO_FAR] = [1 / 16, 1 / 4];

/**
 * The runs of a drawing as rows. Each route is built again and laid over the drawing: a row says that it is as drawn, or how
 * far off and where, or it is not taken and says why.
 */
export function drawnRows(drawing: Drawing, reading: Reading): DrawnRows {
  const steps = drawnRowsInTurn(drawing, reading);
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
  }
}

/** How many of a drawing's runs are laid out. */
export interface RunsReached {
  readonly done: number;
  readonly of: number;
}

/**
 * The same run by run, for whoever shows how far it is.
 *
 * @throws InputError where the lengths say their units themselves, and another is asked for
 */
export function* drawnRowsInTurn(drawing: Drawing, reading: Reading): Generator<RunsReached, DrawnRows> {
  const { unit, layers, shoes, fittings } = reading;
  if (drawing.lengthsSayUnits && unit !== drawing.unit) {
    throw new InputError("the lengths of this list say their units themselves; take it as one in inches.");
  }
  const plans = new Map(layers.filter(({ take }) => take).map((plan) => [plan.layer, plan]));
  const { runs, notRead } = chainLines(drawing, unit, (layer) => plans.has(layer));
  const turn = turnOf(runs);
  const rounding = Math.min(COARSEST, 0.5 * unit * 10 ** -drawing.decimals * Math.sqrt(3));
  const named = nameRuns(runs);
  const rows: DrawnRow[] = [];
  for (const [run, name] of named) {
    yield { done: rows.length, of: named.length };
    const { raceway, size } = plans.get(run.layer)! as { raceway: Raceway; size: TradeSize };
    rows.push(rowOf(run, { name, raceway, size, rounding, turn, shoes, fittings }));
  }
  rows.sort((a, b) => naturalOrder(a.run, b.run));
  return { rows, notRead: [...drawing.notRead, ...notRead], turned: turn };
}

/** Names by the layer; several runs of a layer are numbered. */
function nameRuns(runs: readonly DrawnRun[]): [DrawnRun, string][] {
  const counts = new Map<string, number>();
  const names = runs.map(({ layer }) => conduitOf(layer).rest);
  const many = (name: string) => names.filter((other) => other === name).length > 1;
  return runs.map((run, at) => {
    const name = names[at]!;
    const number = (counts.get(name) ?? 0) + 1;
    counts.set(name, number);
    return [run, many(name) ? `${name}-${number}` : name];
  });
}

interface RowMaking {
  readonly name: string;
  readonly raceway: Raceway;
  readonly size: TradeSize;
  readonly rounding: number;
  readonly turn: number;
  readonly shoes: ShoeBook;
  readonly fittings: FittingRule;
}

function rowOf(drawn: DrawnRun, making: RowMaking): DrawnRow {
  const { name, raceway, size, rounding, turn, shoes, fittings } = making;
  const straightened = turnedBy(-turn);
  const pulls = drawn.pulls.map((points) => points.map(straightened));
  const datum = pulls[0]![0]!;
  const listed = shoes.lookUp(raceway, size);
  const own = fittingsOf({ raceway, size }, fittings, "shoe" in listed);
  const shoe = "shoe" in listed ? listed.shoe : elbowShoe({ raceway, size }, own.radius);
  const radiusAt: RadiusAt = (angle) => (isBought({ angle, corner: {} }, own) ? own.radius : radiusOf(shoe, angle));
  const shop = { radiusAt, elbowAngles: own.angles };
  const fitted = pulls.map((points) => fitCorners(points, rounding, 4 * radiusAt(90)));
  const drawnLength = fitted.reduce((sum, corners) => sum + lengthOf(corners), 0);
  const row = { run: name, raceway, size, start: writeStart(datum), drawnLength, note: "", bendsOff: 0 };
  const refused = (why: string): DrawnRow => ({ ...row, route: "", taken: false, words: `not taken: ${why}` });
  try {
    const written = pulls.map((points, at) => writeSteps(fitted[at]!, datum, points[0]!, rounding, shop));
    const box: RouteStep = { kind: "box" };
    const steps = written.flatMap((pull, at) => (at === 0 ? pull.steps : [box, ...pull.steps]));
    const route = writeRoute(drawn.endsInBox ? [...steps, box] : steps);
    const [read] = readRuns([
      ["Run", "Raceway", "Size", "Route"],
      [name, raceway, size, route],
    ]);
    if (!read?.run) return refused(read?.problem ?? "it cannot be written as a row.");
    const built = buildRunWith(read.run, shoes, fittings);
    if (placedPulls(built).length !== pulls.length) return refused("its boxes cannot be told.");
    const radii = written.map((pull) => pull.radii.filter((radius) => radius !== null));
    const farthest = compare(built, pulls, radii, (point) => add(point, datum));
    const at = `${formatLength(farthest.off, 64)} at ${formatLength(farthest.along)} along`;
    if (farthest.off > TOO_FAR) return refused(`what its route would build is off by ${at}.`);
    const words = farthest.off <= AS_DRAWN ? "as drawn" : `off by ${at}`;
    const bends = bendsMade(built, radii);
    return { ...row, route, writtenLength: runLength(built), farthest, taken: true, words, ...bends };
  } catch (error) {
    if (!isUserError(error)) throw error;
    return refused(error.message);
  }
}

/**
 * How bends are made that are drawn otherwise, in words, and how far off that puts them at most [in].
 * @param radii drawn at each bend that is no shot of a sweep, by pull
 */
function bendsMade({ pulls }: BuiltRun, radii: readonly (readonly number[])[]): { note: string; bendsOff: number } {
  const bends = pulls.flatMap(({ pull, parts }, index) => {
    const own = parts.bends.filter((_, at) => pull.corners[at]!.kind !== "sweep");
    return own.map(({ angle, radius: made }, at) => {
      const radius = radii[index]![at]!;
      return { radius, made, off: Math.abs(cornerHeight(angle, radius) - cornerHeight(angle, made)) };
    });
  });
  const other = bends.filter(({ off }) => off > AS_DRAWN);
  const bendsOff = Math.max(0, ...bends.map(({ off }) => off));
  if (other.length === 0) return { note: "", bendsOff };
  const span = (values: readonly number[]) =>
    [...new Set([Math.min(...values), Math.max(...values)].map((value) => formatLength(value)))].join(" to ");
  const sharp = other.every(({ radius }) => radius === 0);
  const drawn = sharp ? "sharp" : `at ${span(other.map(({ radius }) => radius))}`;
  const made = span(other.map((bend) => bend.made));
  const count = `${other.length} of ${bends.length} bends`;
  return {
    note: `${count} drawn ${drawn}, made at ${made}: up to ${formatLength(bendsOff)} beside the drawn ones`,
    bendsOff,
  };
}

/** Length along legs and arcs as they are drawn [in]. */
function lengthOf({ points, radii }: Corners): number {
  const legs = points.slice(1).map((point, at) => subtract(point, points[at]!));
  const gains = radii.map((radius, at) => gain(toDegrees(angleBetween(legs[at]!, legs[at + 1]!)), radius));
  return legs.reduce((sum, leg) => sum + norm(leg), 0) - gains.reduce((sum, own) => sum + own, 0);
}
