import type { Bench } from "./bench";
import type { Piece } from "../run/builtRun";
import { settingFor } from "../schedule/lineUp";
import { isSaddleCenter, usualStrokes } from "../schedule/usualStrokes";
import type { Hook } from "../shoe/marks";
import type { Shoe } from "../shoe/shoe";
import { hasRoom, strokeRoom, type StrokeRoom } from "./strokeCheck";

/** Which bend is made, and which end is hooked for it. */
interface Hooked {
  /** Place of the bend in the piece, 0 for the first. */
  readonly index: number;
  readonly hook: Hook;
}

/** One stroke of a set-up, with the room it takes. */
export interface SetupStep extends Hooked {
  readonly room: StrokeRoom;
}

export interface Setup {
  readonly steps: readonly SetupStep[];
  /** True when every stroke can be made. */
  readonly possible: boolean;
  /** How the order was found; "stopped" where none was within the strokes that are tried, and not all were. */
  readonly order: "usual" | "searched" | "none works" | "stopped";
}

/** Strokes that are tried for one piece before the search stops. */
const MOST_TRIES = 500;
/** What a departure from the usual way costs: swapping ends is work, another order only needs care. */
const COST = { swap: 10, otherHook: 3, outerFirst: 2, backward: 1 };

/**
 * Finds in which order and with which end on the hook a piece can be bent on this bench. The usual way (order and hooks
 * as in the schedule) is kept when it works; else the cheapest of all orders and both ends; when none works, the usual
 * way comes back with what is in its way.
 *
 * The shape before a stroke depends only on which bends are made, not on their order, so the search walks over sets.
 */
export function findSetup(piece: Piece, shoe: Shoe, bench: Bench): Setup {
  const rooms = new Rooms(piece, shoe, bench);
  const usual = rooms.along(usualStrokes(piece, shoe));
  if (usual.every((step) => step.room.blocked.length === 0)) return { steps: usual, possible: true, order: "usual" };
  // Every order first; where those are too many, only those that lengthen the made stretch at its ends.
  const every = search(rooms, openBends, MOST_TRIES);
  const found = every === "stopped" ? search(rooms, besideMade, 2 * MOST_TRIES) : every;
  if (typeof found === "object") return { steps: rooms.along(found), possible: true, order: "searched" };
  return { steps: usual, possible: false, order: every === "stopped" ? "stopped" : "none works" };
}

/** A way into the piece: the strokes so far, the one that may come next, and what they cost with it. */
interface Way {
  readonly done: readonly boolean[];
  readonly steps: readonly Hooked[];
  readonly next: Hooked | null;
  readonly cost: number;
}

/**
 * The cheapest order, or why there is none. Takes up first the way that can come out cheapest (whole costs, so one list
 * of ways for each), of several the one that has got farthest; each state only once. Whether there is room for a stroke
 * is worked out only when its way is taken up: most never are.
 *
 * @param candidates bends that may come next
 * @param mostTries strokes whose room has been worked out when it stops
 */
function search(
  rooms: Rooms,
  candidates: (done: readonly boolean[]) => number[],
  mostTries: number,
): readonly Hooked[] | "none works" | "stopped" {
  const { piece, shoe } = rooms;
  const waiting: Way[][] = [[{ done: piece.bends.map(() => false), steps: [], next: null, cost: 0 }]];
  const taken = new Set<string>();
  for (let least = 0; least < waiting.length; least++) {
    const ways = (waiting[least] ??= []);
    for (let way = ways.pop(); way; way = ways.pop()) {
      if (rooms.tries >= mostTries) return "stopped";
      const taking = takenUp(way, rooms);
      if (!taking) continue;
      const { done, steps } = taking;
      const last = steps.at(-1);
      const state = `${done.map(Number).join("")} ${last?.hook} ${last?.index}`;
      if (taken.has(state)) continue;
      taken.add(state);
      if (steps.length === done.length) return steps;
      for (const index of candidates(done).reverse()) {
        for (const hook of ["far", "datum"] as const) {
          const cost = way.cost + stepCost(piece, shoe, { index, hook }, last, done);
          (waiting[cost + costAhead(withMade(done, index), index)] ??= []).push({
            done,
            steps,
            next: { index, hook },
            cost,
          });
        }
      }
    }
  }
  return "none works";
}

/** The way with its next stroke made; null where there is no room for it. */
function takenUp({ done, steps, next }: Way, rooms: Rooms): Pick<Way, "done" | "steps"> | null {
  if (!next) return { done, steps };
  return rooms.has(done, next) ? { done: withMade(done, next.index), steps: [...steps, next] } : null;
}

const withMade = (done: readonly boolean[], index: number): readonly boolean[] =>
  done.map((made, place) => made || place === index);

/** A bend left open behind the last one takes a step back at least. */
const costAhead = (done: readonly boolean[], last: number): number =>
  done.some((made, place) => !made && place < last) ? COST.backward : 0;

/** Whether there is room for a stroke, worked out once for each set of made bends: many orders lead to the same set. */
class Rooms {
  private readonly known = new Map<string, boolean>();

  constructor(
    readonly piece: Piece,
    readonly shoe: Shoe,
    private readonly bench: Bench,
  ) {}

  /** Strokes that were looked at. */
  get tries(): number {
    return this.known.size;
  }

  has(done: readonly boolean[], { index, hook }: Hooked): boolean {
    const key = `${done.map(Number).join("")} ${hook} ${index}`;
    const has = this.known.get(key) ?? hasRoom(this.piece, done, index, hook, this.shoe, this.bench);
    this.known.set(key, has);
    return has;
  }

  /** Strokes one after the other, each with the room it takes. */
  along(strokes: readonly Hooked[]): SetupStep[] {
    let done: readonly boolean[] = this.piece.bends.map(() => false);
    return strokes.map(({ index, hook }) => {
      const room = strokeRoom(this.piece, done, index, hook, this.shoe, this.bench);
      done = withMade(done, index);
      return { index, hook, room };
    });
  }
}

/** Every bend that is not made. */
const openBends = (done: readonly boolean[]): number[] => done.flatMap((made, place) => (made ? [] : [place]));

/** The bends next to the stretch that is made; either end one to begin with. */
function besideMade(done: readonly boolean[]): number[] {
  if (!done.includes(true)) return done.length > 1 ? [0, done.length - 1] : [0];
  return openBends(done).filter((place) => done[place - 1] || done[place + 1]);
}

function stepCost(piece: Piece, shoe: Shoe, step: Hooked, last: Hooked | undefined, done: readonly boolean[]): number {
  const outerFirst = [step.index - 1, step.index + 1].some((near) => isSaddleCenter(piece, near) && !done[near]);
  const swapped = last !== undefined && last.hook !== step.hook;
  const backward = last !== undefined && step.index < last.index;
  const usualHook = settingFor(piece, step.index, shoe).hook;
  const otherHook = step.hook !== usualHook;
  return (
    (swapped ? COST.swap : 0) +
    (otherHook ? COST.otherHook : 0) +
    (outerFirst ? COST.outerFirst : 0) +
    (backward ? COST.backward : 0)
  );
}
