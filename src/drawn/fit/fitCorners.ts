import { tan, times } from "../../geometry/angle";
import { angleBetween, cross, norm, subtract, unit, type Vec3 } from "../../geometry/vector";
import { arcFrom, meeting, type FoundArc, type Ray } from "./arcs";

/** A chain of points understood as corners. */
export interface Corners {
  /** Ends and corners [in]. */
  readonly points: readonly Vec3[];
  /** Radius drawn at each inner one [in]; 0 for a sharp corner. */
  readonly radii: readonly number[];
}

/** A way to read the points up to a vertex: it arrives there along a straight line, or at the end of an arc. */
interface State {
  readonly cost: number;
  readonly way: Vec3;
  readonly before?: State;
  readonly vertex: number;
  /** Where the straight line it arrives on begins; undefined at the end of an arc. */
  readonly straightFrom?: number;
  readonly arc?: FoundArc;
  /** Where its arc begins. */
  readonly arcFrom?: number;
  /** True where it turns off without an arc. */
  readonly sharp?: true;
}

/** What each way to read a place counts: the fewest bends win, and a sharp corner is what is left. */
const [ARC, SHARP, SEGMENT, MISFIT] = [1, 1.6, 0.01, 0.2];
/** Coordinates of a careless drawing are this far off [in]. */
const CARELESS = 0.006;
/** Readings kept for each vertex. */
const KEPT = 4;
/** Most chords in an arc. */
const MOST_CHORDS = 64;

/**
 * Reads a chain of points as straight legs and arcs that touch them, arcs being drawn as chords of up to 25° each.
 *
 * @param rounding how far a coordinate may be off because of the drawing's decimals [in]
 * @param widest radius of an arc that is drawn as a single chord [in]: two corners are as likely
 */
export function fitCorners(points: readonly Vec3[], rounding: number, widest: number): Corners {
  const strict = fit(points, rounding, widest);
  const mixed = strict.radii.includes(0) && strict.radii.some((radius) => radius > 0);
  if (!mixed || rounding >= CARELESS) return strict;
  // A sharp corner among arcs is mostly an arc that was drawn with less care.
  const loose = fit(points, CARELESS, widest);
  return loose.radii.length < strict.radii.length ? loose : strict;
}

function fit(points: readonly Vec3[], rounding: number, widest: number): Corners {
  const near = 2e-4 + 2 * rounding;
  const states: State[][] = points.map(() => []);
  const put = (state: State) => {
    const own = states[state.vertex]!;
    const same = own.findIndex(({ way, arc }) => !arc === !state.arc && angleBetween(way, state.way) < 1e-4);
    if (same >= 0 && own[same]!.cost <= state.cost) return;
    if (same >= 0) own.splice(same, 1);
    own.push(state);
    own.sort((a, b) => a.cost - b.cost).splice(KEPT);
  };
  const last = points.length - 1;
  put({ cost: 0, way: direction(points, 0, 1), vertex: 1, straightFrom: 0 });
  for (let vertex = 1; vertex < last; vertex += 1) {
    for (const state of states[vertex]!) {
      straightOn(points, state, near).forEach(put);
      if (state.arc && state.arc.turn > Math.PI) continue;
      const start = state.straightFrom ?? state.arcFrom!;
      const reach = norm(subtract(points[vertex]!, points[start]!));
      const first = norm(subtract(points[vertex + 1]!, points[vertex]!));
      for (let to = vertex + 1; to <= Math.min(last, vertex + MOST_CHORDS); to += 1) {
        // Chords of an arc are alike: nothing that comes after one that is not can be on it.
        const own = norm(subtract(points[to]!, points[to - 1]!));
        if (Math.abs(own - first) > 4 * near + 0.05 * first) break;
        const chord = norm(subtract(points[to]!, points[vertex]!));
        const arc = arcFrom(
          { at: points[vertex]!, way: state.way },
          points,
          vertex,
          to,
          near * (1 + (2 * chord) / reach),
        );
        if (!arc || (to === vertex + 1 && arc.radius > widest)) continue;
        const cost = state.cost + ARC + (MISFIT * arc.off) / near;
        put({ cost, way: arc.way, before: state, vertex: to, arc, arcFrom: vertex });
      }
    }
  }
  return cornersOf(points, states[last]![0]!);
}

const direction = (points: readonly Vec3[], from: number, to: number): Vec3 =>
  unit(subtract(points[to]!, points[from]!));

/** What can follow on the next segment: the same straight line, one that an arc led into, or one past a sharp corner. */
function straightOn(points: readonly Vec3[], state: State, near: number): State[] {
  const { vertex, cost } = state;
  const way = direction(points, vertex, vertex + 1);
  const next = { before: state, vertex: vertex + 1 };
  const sharp = { ...next, cost: cost + SHARP + SEGMENT, way, straightFrom: vertex, sharp: true } as const;
  if (state.straightFrom !== undefined) {
    const whole = direction(points, state.straightFrom, vertex + 1);
    const off = norm(cross(whole, subtract(points[vertex]!, points[state.straightFrom]!)));
    const bent = angleBetween(state.way, way);
    if (off > near || bent > 0.05) return [sharp];
    const straight = {
      ...next,
      cost: cost + SEGMENT + (MISFIT * off) / near,
      way: whole,
      straightFrom: state.straightFrom,
    };
    return bent > 1e-9 && bent > near ? [straight, sharp] : [straight];
  }
  const off = misfit(points, state, { at: points[vertex]!, way });
  const length = norm(subtract(points[vertex + 1]!, points[vertex]!));
  const reach = norm(subtract(points[state.arcFrom!]!, points[state.vertex]!));
  const may = near * (2 + (2 * reach) / length);
  return off > may
    ? [sharp]
    : [{ ...next, cost: cost + SEGMENT + (MISFIT * off) / may, way, straightFrom: vertex }, sharp];
}

/** How far the setbacks of an arc differ, and how far the lines on its sides pass each other [in]. */
function misfit(points: readonly Vec3[], state: State, after: Ray): number {
  const before: Ray = { at: points[state.arcFrom!]!, way: state.before!.way };
  const met = meeting(before, after);
  if (!met || met.onOne <= 0 || met.onOther >= 0) return Infinity;
  return Math.max(met.gap, Math.abs(met.onOne + met.onOther));
}

/** The corners of the reading that ends in a state. The lines beside an arc are the straights there; where arcs touch, the tangent. */
function cornersOf(points: readonly Vec3[], end: State): Corners {
  const chain: State[] = [];
  for (let state: State | undefined = end; state; state = state.before) chain.unshift(state);
  const sharpFrom = new Set(chain.flatMap(({ sharp, straightFrom }) => (sharp ? [straightFrom!] : [])));
  const spans = chain.filter((state, at) => state.arc || chain[at + 1]?.straightFrom !== state.straightFrom);
  const found: Vec3[] = [points[0]!];
  const radii: number[] = [];
  spans.forEach((span, at) => {
    const [before, after] = [spans[at - 1], spans[at + 1]];
    if (!span.arc) {
      if (sharpFrom.has(span.straightFrom!)) {
        found.push(points[span.straightFrom!]!);
        radii.push(0);
      }
      return;
    }
    const one: Ray = { at: points[span.arcFrom!]!, way: wayInto(points, span, before) };
    const other: Ray = {
      at: points[span.vertex]!,
      way:
        after && !after.arc && !sharpFrom.has(after.straightFrom!)
          ? direction(points, after.straightFrom!, after.vertex)
          : span.way,
    };
    const met = meeting(one, other);
    const setback = met ? (met.onOne - met.onOther) / 2 : 0;
    found.push(met ? met.at : one.at);
    radii.push(met ? setback / tan(times(angleBetween(one.way, other.way), 0.5)) : span.arc.radius);
  });
  found.push(points.at(-1)!);
  return withoutNoTurn(found, radii);
}

/** Less turn than this is none [rad]: what is drawn there goes straight on. */
const NO_TURN = 0.001;

function withoutNoTurn(points: readonly Vec3[], radii: readonly number[]): Corners {
  const turns = radii.map((_, at) =>
    angleBetween(subtract(points[at + 1]!, points[at]!), subtract(points[at + 2]!, points[at + 1]!)),
  );
  const stays = (corner: number) => turns[corner]! > NO_TURN;
  return {
    points: points.filter((_, at) => at === 0 || at === points.length - 1 || stays(at - 1)),
    radii: radii.filter((_, at) => stays(at)),
  };
}

const wayInto = (points: readonly Vec3[], span: State, before: State | undefined): Vec3 =>
  before && !before.arc ? direction(points, before.straightFrom!, before.vertex) : span.before!.way;
