import type { Bench } from "./bench";
import type { Piece } from "./buildRun";
import { settingFor } from "./lineUp";
import type { Hook } from "./marks";
import type { Shoe } from "./shoe";
import { strokeRoom, type StrokeRoom } from "./strokeCheck";

/** One stroke of a set-up: which bend, which end is hooked, the room it takes. */
export interface SetupStep {
  /** Place of the bend in the piece, 0 for the first. */
  readonly index: number;
  readonly hook: Hook;
  readonly room: StrokeRoom;
}

export interface Setup {
  readonly steps: readonly SetupStep[];
  /** True when every stroke can be made. */
  readonly possible: boolean;
  /** How the order was found. */
  readonly order: "usual" | "searched" | "none works";
}

/** Pieces with more bends than this are tried from one end to the other only: the rest would be too many orders. */
const ANY_ORDER_LIMIT = 10;
/** What a departure from the usual way costs: swapping ends is work, another order only needs care. */
const COST = { swap: 10, otherHook: 3, backward: 1 };

/**
 * Finds in which order and with which end on the hook a piece can be bent on this bench. The usual way (from the datum
 * end, hooks as in the schedule) is kept when it works; else the cheapest of all orders and both ends; when none works,
 * the usual way comes back with what is in its way.
 *
 * The shape before a stroke depends only on which bends are made, not on their order, so the search walks over sets.
 */
export function findSetup(piece: Piece, shoe: Shoe, bench: Bench): Setup {
  const usual = usualSteps(piece, shoe, bench);
  if (usual.every((step) => step.room.blocked.length === 0)) return { steps: usual, possible: true, order: "usual" };
  const found = search(piece, shoe, bench);
  return found
    ? { steps: found, possible: true, order: "searched" }
    : { steps: usual, possible: false, order: "none works" };
}

function usualSteps(piece: Piece, shoe: Shoe, bench: Bench): SetupStep[] {
  return piece.bends.map((_, index) => {
    const { hook } = settingFor(piece, index, shoe);
    const done = piece.bends.map((__, place) => place < index);
    return { index, hook, room: strokeRoom(piece, done, index, hook, shoe, bench) };
  });
}

interface Reached {
  readonly cost: number;
  readonly steps: readonly SetupStep[];
}

function search(piece: Piece, shoe: Shoe, bench: Bench): readonly SetupStep[] | undefined {
  const count = piece.bends.length;
  const roomFor = remembered(piece, shoe, bench);
  // best[set]: the cheapest way to each (last hook, last bend) with that set of bends made.
  let layer = new Map<string, { done: boolean[]; last: SetupStep | undefined; way: Reached }>();
  layer.set("", { done: piece.bends.map(() => false), last: undefined, way: { cost: 0, steps: [] } });
  for (let made = 0; made < count; made++) {
    const next: typeof layer = new Map();
    for (const { done, last, way } of layer.values()) {
      for (const index of candidates(done)) {
        for (const hook of ["datum", "far"] as const) {
          const room = roomFor(done, index, hook);
          if (room.blocked.length > 0) continue;
          const step = { index, hook, room };
          const cost = way.cost + stepCost(piece, shoe, step, last);
          const after = done.map((value, place) => value || place === index);
          const key = `${after.map(Number).join("")} ${hook} ${index}`;
          const known = next.get(key);
          if (!known || cost < known.way.cost) {
            next.set(key, { done: after, last: step, way: { cost, steps: [...way.steps, step] } });
          }
        }
      }
    }
    layer = next;
  }
  return [...layer.values()].sort((a, b) => a.way.cost - b.way.cost)[0]?.way.steps;
}

/** The room of a stroke, worked out once for each set of made bends: many orders lead to the same set. */
function remembered(
  piece: Piece,
  shoe: Shoe,
  bench: Bench,
): (done: boolean[], index: number, hook: Hook) => StrokeRoom {
  const known = new Map<string, StrokeRoom>();
  return (done, index, hook) => {
    const key = `${done.map(Number).join("")} ${hook} ${index}`;
    const room = known.get(key) ?? strokeRoom(piece, done, index, hook, shoe, bench);
    known.set(key, room);
    return room;
  };
}

/** Bends that may come next: any that is not made; in long pieces only those beside the stretch that is made. */
function candidates(done: readonly boolean[]): number[] {
  const open = done.flatMap((value, place) => (value ? [] : [place]));
  if (done.length <= ANY_ORDER_LIMIT) return open;
  if (open.length === done.length) return [0, done.length - 1];
  return open.filter((place) => done[place - 1] || done[place + 1]);
}

function stepCost(piece: Piece, shoe: Shoe, step: SetupStep, last: SetupStep | undefined): number {
  const swapped = last !== undefined && last.hook !== step.hook;
  const backward = last !== undefined && step.index < last.index;
  const usualHook = settingFor(piece, step.index, shoe).hook;
  return (swapped ? COST.swap : 0) + (backward ? COST.backward : 0) + (step.hook !== usualHook ? COST.otherHook : 0);
}
