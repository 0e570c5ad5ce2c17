import type { Bench } from "./bench";
import type { Piece } from "../run/builtRun";
import { settingFor } from "../schedule/lineUp";
import type { Hook } from "../shoe/marks";
import type { Shoe } from "../shoe/shoe";
import { strokeRoom, tailProblem, type StrokeRoom } from "./strokeCheck";

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

/** A way into the piece: the strokes so far and what they cost. */
interface Way {
  readonly done: readonly boolean[];
  readonly steps: readonly SetupStep[];
}

/** Takes up the cheapest way first (whole costs, so one list of ways for each), and each state only once. */
function search(piece: Piece, shoe: Shoe, bench: Bench): readonly SetupStep[] | undefined {
  const roomFor = remembered(piece, shoe, bench);
  const byCost: Way[][] = [[{ done: piece.bends.map(() => false), steps: [] }]];
  const taken = new Set<string>();
  for (let cost = 0; cost < byCost.length; cost++) {
    for (const { done, steps } of byCost[cost] ?? []) {
      const last = steps.at(-1);
      const state = `${done.map(Number).join("")} ${last?.hook} ${last?.index}`;
      if (taken.has(state)) continue;
      taken.add(state);
      if (steps.length === done.length) return steps;
      for (const index of candidates(done)) {
        for (const hook of ["datum", "far"] as const) {
          const room = roomFor(done, index, hook);
          if (!room || room.blocked.length > 0) continue;
          const step = { index, hook, room };
          const next = cost + stepCost(piece, shoe, step, last);
          (byCost[next] ??= []).push({
            done: done.map((made, place) => made || place === index),
            steps: [...steps, step],
          });
        }
      }
    }
  }
  return undefined;
}

type RoomFor = (done: readonly boolean[], index: number, hook: Hook) => StrokeRoom | undefined;

/**
 * The room of a stroke, worked out once for each set of made bends: many orders lead to the same set. Undefined where the
 * tail cannot be held at all.
 */
function remembered(piece: Piece, shoe: Shoe, bench: Bench): RoomFor {
  const known = new Map<string, StrokeRoom>();
  return (done, index, hook) => {
    if (tailProblem(piece, done, index, hook, shoe) !== "") return undefined;
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
