import type { Rack } from "./rack";
import { emptyStick, type Split, type Splitting } from "./splitPieces";

/** A stick taken away: where pieces are parted for it. */
export type Removal = readonly Split[];

/**
 * Sticks that are worth parting pieces for, one after the other, those with least in them first. Each has to pay for its
 * own couplings; or, where that saves more, all of them together: parting the pieces of a run made often pays late.
 *
 * @param worth what each stick saves when it is not bought; 0 for one that is on hand
 */
export function fewerSticks(rack: Rack, worth: readonly number[], splitting: Splitting): Removal[] {
  const each = takeAway(rack, worth, splitting, () => 1);
  if (splitting.pieces.every(({ copies }) => copies === 1)) return each.removals;
  const together = takeAway(rack, worth, splitting, (stick) =>
    Math.max(1, ...rack.held(stick).map(({ piece }) => splitting.pieces[piece]!.copies)),
  );
  return together.saved > each.saved ? together.removals : each.removals;
}

/** @param credit how many times its own worth the couplings for a stick may cost */
function takeAway(
  rack: Rack,
  worth: readonly number[],
  splitting: Splitting,
  credit: (stick: number) => number,
): { removals: Removal[]; saved: number } {
  const removals: Removal[] = [];
  let now = rack;
  let saved = 0;
  let best = { count: 0, saved: 0 };
  const order = [...worth.keys()].filter((stick) => worth[stick]! > 0);
  for (const stick of order.sort((a, b) => rack.room(b) - rack.room(a))) {
    const emptied = emptyStick(now, stick, credit(stick) * worth[stick]!, splitting);
    if (!emptied) continue;
    removals.push(emptied.splits);
    now = emptied.rack;
    saved += worth[stick]! - emptied.cost;
    if (saved > best.saved) best = { count: removals.length, saved };
  }
  return { removals: removals.slice(0, best.count), saved: best.saved };
}
