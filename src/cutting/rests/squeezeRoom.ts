import { fillBins } from "../filling/fillBins";
import { generate } from "../linear/generate";
import { Master, suitsProgram } from "../linear/master";
import type { FillCount } from "../model/model";
import { planOf, refit } from "../model/packed";
import type { Packed } from "../model/packed";
import { seededRandom } from "../model/random";
import type { RoomSearch } from "./roomSearch";
import { squeeze } from "../filling/squeeze";
import { squeezeSteps } from "../filling/squeezeInto";
import type { Work } from "../model/work";

/**
 * Empties one bin by squeezing its pieces into the others, again and again; meanwhile the linear program raises what is
 * known to be needed at least.
 *
 * @param whole true when the known fills are a whole plan to start from
 */
export function* squeezeRoom(search: RoomSearch, whole: boolean, seed: number, work: Work): Generator<void, void> {
  const random = seededRandom(seed);
  const { model, others } = search;
  const latest = (): readonly FillCount[] | undefined => search.plan ?? (whole ? search.known : undefined);
  for (let n = 0, better = true; better && search.open && !work.over(); n++) {
    const before = search.enough;
    const plan = latest();
    yield* press(search, plan ? refit(model, plan, others) : fillBins(model, others, random, work), random, work);
    if (search.open) yield* press(search, fillBins(model, others, random, work), random, work);
    if (n === 0 && suitsProgram(model)) yield* raiseLeast(search, latest() ?? search.known, random, work);
    better = n === 0 || search.enough < before;
  }
}

function* press(search: RoomSearch, packed: Packed, random: () => number, work: Work): Generator<void, void> {
  const { model, bin } = search;
  const room = yield* work.within(squeezeSteps(model), squeeze(model, packed, search.least, random, work));
  if (room >= search.enough) return;
  search.plan = planOf([...packed.bins, { kind: bin, items: packed.loose }]);
  search.enough = room;
}

/** Column generation with the smallest room not yet excluded, as long as that proves it too small. */
function* raiseLeast(
  search: RoomSearch,
  known: readonly FillCount[],
  random: () => number,
  work: Work,
): Generator<void, void> {
  const plans = [known];
  while (search.open && !work.over()) {
    const { model, counts } = search.withRoom(search.least);
    const master = new Master(model, work, random);
    master.start(plans, counts, random);
    const aim = counts[0]!;
    const { cut, lower } = yield* generate(master, model.demands, counts, { enough: aim, most: aim }, work);
    if (!cut || lower <= aim + 1e-9) return;
    const before = search.least;
    search.learn(cut.prices, work);
    if (search.least === before) return;
    plans[1] = master.fills.map((fill) => ({ fill, count: 1 }));
  }
}
