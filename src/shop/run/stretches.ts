import { arcLength } from "../../geometry/arc";
import type { PathParts } from "../../geometry/path";
import type { FactoryElbow, PieceBend } from "./builtRun";
import { isBought, type RunElbows } from "../elbows/factoryElbows";

/** A stretch of a pull between elbows and ends, in developed positions [in]. */
export interface Stretch {
  readonly from: number;
  readonly to: number;
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

/** The bends that are bought. Where two elbows, or an elbow and what else there is, stand closer, their straight ends are shorter. */
function placedElbows(bends: readonly PieceBend[], { straights }: PathParts, elbows: RunElbows): PlacedElbow[] {
  const { end } = elbows;
  const room = (straight: number, beside: PieceBend | undefined): number => {
    const free = Math.max(0, straights[straight]!);
    return Math.min(end, beside && isBought(beside, elbows) ? free / 2 : free);
  };
  return bends.flatMap((bend, index): PlacedElbow[] => {
    if (!isBought(bend, elbows)) return [];
    const [before, after] = [room(index, bends[index - 1]), room(index + 1, bends[index + 1])];
    const { start, angle, radius } = bend;
    return [
      { ...bend, straight: { end, before, after }, from: start - before, to: start + arcLength(angle, radius) + after },
    ];
  });
}

/** What elbows part a pull into; one stretch where it has none. */
export function stretches(bends: readonly PieceBend[], parts: PathParts, elbows: RunElbows): Stretch[] {
  const placed = placedElbows(bends, parts, elbows);
  const found: Stretch[] = [];
  let [from, own]: [number, PieceBend[]] = [0, []];
  for (const bend of bends) {
    const elbow = placed.find(({ place }) => place === bend.place);
    if (elbow) {
      found.push({ from, to: elbow.from, bends: own, elbow });
      [from, own] = [elbow.to, []];
    } else own.push(bend);
  }
  return [...found, { from, to: parts.developed, bends: own }];
}
