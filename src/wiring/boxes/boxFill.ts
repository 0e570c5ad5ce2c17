import { InputError, NotListedError } from "../../units/errors";
import { inWords } from "../../raceway/inWords";
import table from "../data/boxFill.json";
import { circularMils, type WireCount } from "../wireSizes";

const { allowance, groundsInOne, furtherGround, device } = table;
const VOLUMES: Record<string, number> = allowance;

/** What is in a box. */
export interface BoxContents {
  /** Conductors that end or are spliced there, and unbroken ones that pass through. */
  readonly conductors: readonly WireCount[];
  /** Equipment grounding conductors. */
  readonly grounds: readonly WireCount[];
  /** Yokes, each by the largest conductor on it. */
  readonly devices: readonly WireCount[];
  /** True when clamps inside hold cables. */
  readonly clamps: boolean;
  /** Kinds of fitting that hold something inside: studs, hickeys. */
  readonly supports: number;
}

/**
 * Least volume of an outlet or device box [in³].
 *
 * Each conductor counts its allowance; up to four grounding conductors one of the largest, each further one a quarter more; a
 * yoke two of the largest on it; clamps, and each kind of support fitting, one of the largest in the box.
 *
 * @throws InputError for an empty box; NotListedError for a conductor larger than 6 AWG
 * @example boxVolume with 6 #12 alone //=> 13.5
 */
export function boxVolume({ conductors, grounds, devices, clamps, supports }: BoxContents): number {
  const all = [...conductors, ...grounds, ...devices];
  if (all.length === 0) throw new InputError("conductors, grounds or devices must hold something; all are empty.");
  const sum = (wires: readonly WireCount[]) =>
    wires.reduce((total, { count, size }) => total + count * volumeOf(size), 0);
  const groundCount = grounds.reduce((total, { count }) => total + count, 0);
  const groundVolume =
    groundCount === 0 ? 0 : largestOf(grounds) * (1 + furtherGround * Math.max(0, groundCount - groundsInOne));
  return sum(conductors) + groundVolume + device * sum(devices) + largestOf(all) * ((clamps ? 1 : 0) + supports);
}

/** True for a conductor that a box is filled by: larger ones measure it by 314.28. */
export const hasBoxVolume = (size: string): boolean => size in VOLUMES;

const largestOf = (wires: readonly WireCount[]): number =>
  volumeOf([...wires].sort((a, b) => circularMils(b.size) - circularMils(a.size))[0]!.size);

function volumeOf(size: string): number {
  const volume = VOLUMES[size];
  if (volume !== undefined) return volume;
  throw new NotListedError(
    `No volume is listed for a conductor of ${size}; sizes are ${inWords(Object.keys(VOLUMES).sort((a, b) => Number(b) - Number(a)))}. ` +
      "Boxes of larger ones are sized by PULLBOX.",
  );
}
