import { reach } from "../filling/reach";
import { fillWeight } from "../model/model";
import type { Work } from "../model/work";
import type { RoomSearch } from "./roomSearch";

/** Dives for each room tried. */
const TRIES = 3;

/** Seeks the smallest room that will do by bisection; whole prices prove from below how small it can be at all. */
export function* bisectRoom(search: RoomSearch, seed: number, work: Work): Generator<void, void> {
  // What was tried without success, and not proven impossible.
  let failed = search.least - 1;
  let probe = search.least;
  while (Math.max(search.least, failed + 1) < search.enough && !work.over()) {
    const { model, counts } = search.withRoom(probe);
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
      if (answer.cut) search.learn(answer.cut.prices, work);
      if (search.least <= probe) failed = probe;
    }
    const from = Math.max(search.least, failed + 1);
    probe = answer.impossible ? from : Math.floor((from + search.enough) / 2);
  }
}
