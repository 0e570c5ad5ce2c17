import { arcLength } from "../../geometry/arc";
import type { PathParts } from "../../geometry/path";
import type { FactoryElbow, PieceBend } from "./builtRun";
import { isBought, type RunFittings } from "../fittings/factoryElbows";

/** A stretch of a pull between elbows and ends, in developed positions [in]. */
export interface Stretch {
  readonly from: number;
  readonly to: number;
  /** What fittings take of it at its start and at its end; negative where the conduit goes on into one. */
  readonly lead: number;
  readonly trail: number;
  /** The bends the shop makes on it. */
  readonly bends: readonly PieceBend[];
  /** The elbow that follows it. */
  readonly elbow?: PlacedElbow;
}

/** A bend that is bought, and where the elbow starts and ends, its straight ends included. */
interface PlacedElbow extends PieceBend {
  readonly straight: FactoryElbow["straight"];
  readonly from: number;
  readonly to: number;
}

/** The fittings of a pull, and what those at its start and its end take of it [in]. */
export interface Taken {
  readonly fittings: RunFittings;
  readonly start: number;
  readonly end: number;
}

/** The bends that are bought. Where two elbows, or an elbow and what else there is, stand closer, their straight ends are shorter. */
function placedElbows(bends: readonly PieceBend[], { straights }: PathParts, taken: Taken): PlacedElbow[] {
  const { fittings, start, end: atEnd } = taken;
  const { end } = fittings;
  const room = (straight: number, beside: PieceBend | undefined): number => {
    const between = beside !== undefined && isBought(beside, fittings);
    const takes = beside ? fittings.gap : straight === 0 ? start : atEnd;
    const free = Math.max(0, straights[straight]! - takes);
    return Math.min(end, between ? free / 2 : free);
  };
  return bends.flatMap((bend, index): PlacedElbow[] => {
    if (!isBought(bend, fittings)) return [];
    const [before, after] = [room(index, bends[index - 1]), room(index + 1, bends[index + 1])];
    const { angle, radius } = bend;
    const [from, to] = [bend.start - before, bend.start + arcLength(angle, radius) + after];
    return [{ ...bend, straight: { end, before, after }, from, to }];
  });
}

/** What elbows part a pull into; one stretch where it has none. */
export function stretches(bends: readonly PieceBend[], parts: PathParts, taken: Taken): Stretch[] {
  const placed = placedElbows(bends, parts, taken);
  const found: Stretch[] = [];
  const { gap } = taken.fittings;
  const lead = () => (found.length === 0 ? taken.start : gap);
  let [from, own]: [number, PieceBend[]] = [0, []];
  for (const bend of bends) {
    const elbow = placed.find(({ place }) => place === bend.place);
    if (elbow) {
      found.push({ from, to: elbow.from, lead: lead(), trail: gap, bends: own, elbow });
      [from, own] = [elbow.to, []];
    } else own.push(bend);
  }
  return [...found, { from, to: parts.developed, lead: lead(), trail: taken.end, bends: own }];
}
