import type { CutPlan } from "../../cutting";
import { Rack, type Part } from "./rack";
import type { SplitPiece } from "./splitPieces";

/** What a stick of a plan costs to leave away; undefined where it is not bought. */
export interface RackStick {
  readonly kind: number;
  readonly isBought: boolean;
}

/** Every stick of a plan by itself, with the very pieces in it. */
export function rackOf(
  plan: CutPlan,
  pieces: readonly SplitPiece[],
  kerf: number,
): { readonly rack: Rack; readonly sticks: readonly RackStick[] } {
  const waiting = new Map<number, number[]>();
  pieces.forEach(({ length, copies }, piece) => {
    const queue = waiting.get(length) ?? [];
    waiting.set(length, queue);
    for (let copy = 0; copy < copies; copy++) queue.push(piece);
  });
  const parts: Part[][] = [];
  const room: number[] = [];
  const sticks: RackStick[] = [];
  for (const { stock, count, cuts } of plan.patterns) {
    const { length, quantity } = plan.stocks[stock]!;
    const taken = cuts.reduce((sum, cut) => sum + cut.count * (cut.length + kerf), 0);
    for (let stick = 0; stick < count; stick++) {
      parts.push(
        cuts.flatMap((cut) =>
          Array.from({ length: cut.count }, () => ({
            piece: waiting.get(cut.length)!.pop()!,
            from: 0,
            to: cut.length,
          })),
        ),
      );
      room.push(length + kerf - taken);
      sticks.push({ kind: stock, isBought: quantity === Infinity });
    }
  }
  return { rack: Rack.of(parts, room), sticks };
}
