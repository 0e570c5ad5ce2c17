import { isFlexible, type Raceway } from "../../raceway/raceway";
import { nominalStick } from "../../raceway/sticks";
import type { TradeSize } from "../../raceway/tradeSize";

/**
 * What a take-off counts, in the order in which its lines stand, each with the class it is in: the word that an allowance for
 * several kinds goes by. What is in none goes by its kind alone; work is not bought.
 */
const KINDS = {
  conduit: "conduit",
  stick: "conduit",
  coupling: "fittings",
  elbow: "fittings",
  body: "fittings",
  union: "fittings",
  "expansion fitting": "fittings",
  connector: "fittings",
  locknut: "fittings",
  bushing: "fittings",
  "grounding bushing": "fittings",
  "conductor support": "fittings",
  strap: "supports",
  trapeze: "supports",
  strut: "supports",
  "threaded rod": "supports",
  "pull box": "boxes",
  bend: "work",
  cut: "work",
  thread: "work",
  ream: "work",
  termination: "work",
  support: "work",
  box: "boxes",
  conductor: "wire",
  "wire termination": "work",
  "counted item": "none",
  allowance: "none",
} as const;

export type ItemKind = keyof typeof KINDS;

/** In the order in which their lines stand. */
export const ITEM_KINDS = Object.keys(KINDS) as readonly ItemKind[];

/** The kinds of a class, as `fittings`; none where no class is called so. */
export const kindsOfClass = (name: string): readonly ItemKind[] =>
  ITEM_KINDS.filter((kind) => KINDS[kind] !== "none" && KINDS[kind] === name);

/** The class of a kind; a kind that is in none is its own. */
export const classOf = (kind: ItemKind): string => (KINDS[kind] === "none" ? kind : KINDS[kind]);

/** One thing a take-off counts. Its name is what Prices and Labor call it. */
export interface Item {
  readonly name: string;
  readonly kind: ItemKind;
  readonly unit: "ft" | "each";
  /** False for what is installed or made, but not bought: feet of conduit that comes in sticks, bends, couplings that come with a stick. */
  readonly bought: boolean;
  /** Absent for what belongs to no one raceway and size: named boxes, conductors, counted items. */
  readonly raceway?: Raceway;
  readonly size?: TradeSize;
  /** Length of a stick [ft]; for sticks only. */
  readonly stickFeet?: number;
  /** Name of the item it is taken in place of: a coupling that comes with a stick, of one to buy. */
  readonly inPlaceOf?: string;
  /** Name of the item whose price it has, where that is another: an allowance of it. */
  readonly pricedAs?: string;
  /** Its price, where it is said with it: a lump sum. */
  readonly setPrice?: number;
  /** What a stick costs by the user's Stock table; for sticks only. */
  readonly stockPrice?: number;
}

/** Of a raceway and a size: what every line but boxes and conductors is about. */
export interface OfSize {
  readonly raceway: Raceway;
  readonly size: TradeSize;
}

/**
 * An item of a raceway and size; its name is raceway, size and words.
 * @example sizedItem({ raceway: "EMT", size: "1/2" }, "strap").name //=> "EMT 1/2 strap"
 */
export function sizedItem({ raceway, size }: OfSize, kind: ItemKind, words: string = kind): Item {
  const unit = kind === "conduit" ? "ft" : "each";
  return {
    name: `${raceway} ${size} ${words}`,
    kind,
    unit,
    bought: kind === "conduit" ? isFlexible(raceway) : KINDS[kind] !== "work",
    raceway,
    size,
  };
}

/** Conduit by the stick, called and sold by its nominal length. @param length of conduit in it [in], without its bell [in] */
export function stickItem(of: OfSize, length: number, bell = 0): Item {
  const feet = nominalStick(of.raceway, of.size, length, bell) / 12;
  return { ...sizedItem(of, "stick", `conduit, ${Number(feet.toFixed(4))} ft stick`), stickFeet: feet };
}
