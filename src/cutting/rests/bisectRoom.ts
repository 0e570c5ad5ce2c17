import { leastRoom } from "../linear/leastRoom";
import { fillWeight } from "../model/model";
import { reach } from "../filling/reach";
import { withRoom } from "./roomSearch";
import type { RoomSearch } from "./roomSearch";
import type { Work } from "../model/work";

/** Dives for each room tried. */
const TRIES = 3;

/**
 * Seeks the smallest room that will do by bisection; whole prices prove from below how small it can be at all. Answers
 * whether the end is proven.
 */
export function* bisectRoom(search: RoomSearch, seed: number, work: Work): Generator<void, boolean> {
  let proven = true;
  let probe = search.least;
  while (search.least < search.enough && !work.over()) {
    const { model, counts } = withRoom(search, probe);
    const answer = yield* reach(model, counts, search.plan ?? search.known, TRIES, seed, work);
    if (answer.plan) {
      // The small bin, last in the extended model, is a part of the one to be emptied.
      search.plan = answer.plan.map(({ fill, count }) => ({
        fill: fill.bin === search.model.bins.length ? { ...fill, bin: search.bin } : fill,
        count,
      }));
      const weights = search.plan
        .filter(({ fill }) => fill.bin === search.bin)
        .map(({ fill }) => fillWeight(model, fill));
      search.enough = Math.min(probe, ...weights);
    } else {
      const { cut, impossible } = answer;
      const bound = cut ? leastRoom(search.model, cut, search.others, search.enough, work) : 0;
      if (!impossible) proven = false;
      search.least = Math.max(bound, probe + 1);
    }
    probe = answer.impossible ? search.least : Math.floor((search.least + search.enough) / 2);
  }
  return proven && search.least >= search.enough;
}
