import type { ShowLength } from "../../units/formatLength";
import type { Bench } from "./bench";
import { stroke } from "./benchShape";
import type { Piece } from "../run/builtRun";
import { tailProblem, type Told } from "../schedule/heldTail";
import type { Hook } from "../shoe/marks";
import type { Shoe } from "../shoe/shoe";

/** Room a stroke takes, from the conduit at the shoe [in], and what stands in its way. */
export interface StrokeRoom {
  readonly above: number;
  readonly below: number;
  readonly beside: number;
  /** How far the conduit reaches on the hook's side and on the other side. */
  readonly behind: number;
  readonly ahead: number;
  /** Why the stroke cannot be made; empty when it can. */
  readonly blocked: readonly Told[];
}

/** Rounding allowed before something counts as hit [in]. */
const TOUCH = 1e-6;

/**
 * Works out the room for one stroke and whether the bench gives it.
 *
 * @param done which bends of the piece are made already
 * @param index the bend to make
 */
export function strokeRoom(
  piece: Piece,
  done: readonly boolean[],
  index: number,
  hook: Hook,
  shoe: Shoe,
  bench: Bench,
): StrokeRoom {
  const room = { above: 0, below: 0, beside: 0, behind: 0, ahead: 0 };
  const radius = shoe.outsideDiameter / 2;
  let onTable = false;
  stroke(piece, done, index, hook, bench, (x, y, z) => {
    room.above = Math.max(room.above, z + radius);
    room.below = Math.max(room.below, radius - z);
    room.beside = Math.max(room.beside, Math.abs(y) + radius);
    room.behind = Math.max(room.behind, -x);
    room.ahead = Math.max(room.ahead, x);
    onTable ||= meetsTable(x, y, z - radius, bench);
    return false;
  });
  const blocked = [
    room.below > bench.height + TOUCH
      ? (show: ShowLength) =>
          `meets the floor: reaches ${show(room.below, 1)} below the conduit, the floor is ${show(bench.height, 1)} below`
      : undefined,
    room.above > bench.roomAbove + TOUCH
      ? (show: ShowLength) => `needs ${show(room.above, 1)} above the conduit; there is ${show(bench.roomAbove, 1)}`
      : undefined,
    room.beside > bench.roomBeside + TOUCH
      ? (show: ShowLength) => `needs ${show(room.beside, 1)} beside the conduit; there is ${show(bench.roomBeside, 1)}`
      : undefined,
    onTable ? () => "meets the table" : undefined,
    tailProblem(piece, done, index, hook, shoe),
  ].filter((words) => words !== undefined);
  return { ...room, blocked };
}

/** True when a stroke has room, as `strokeRoom` says it; stops at the first point that is in the way. */
export function hasRoom(
  piece: Piece,
  done: readonly boolean[],
  index: number,
  hook: Hook,
  shoe: Shoe,
  bench: Bench,
): boolean {
  if (tailProblem(piece, done, index, hook, shoe)) return false;
  const radius = shoe.outsideDiameter / 2;
  let inTheWay = false;
  stroke(piece, done, index, hook, bench, (x, y, z) => {
    inTheWay =
      radius - z > bench.height + TOUCH ||
      z + radius > bench.roomAbove + TOUCH ||
      Math.abs(y) + radius > bench.roomBeside + TOUCH ||
      meetsTable(x, y, z - radius, bench);
    return inTheWay;
  });
  return !inTheWay;
}

const meetsTable = (x: number, y: number, underside: number, bench: Bench): boolean =>
  x <= 0 && x >= -bench.tableLength && Math.abs(y) <= bench.tableWidth / 2 && underside < -bench.tableDrop - TOUCH;
