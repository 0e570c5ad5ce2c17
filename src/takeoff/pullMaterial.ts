import { arcLength } from "../geometry/arc";
import { isElbow } from "./factoryElbows";
import { bendKind, type BendKind } from "../shop/lineUp";
import type { BuiltPull, Piece } from "../shop/buildRun";

/** A bend the shop makes. */
export interface ShopBend {
  readonly kind: BendKind;
  /** [°] */
  readonly angle: number;
}

/** What a pull is made of, from box to box. */
export interface PullMaterial {
  /** Cut lengths [in]. */
  readonly pieces: readonly number[];
  readonly bends: readonly ShopBend[];
  /** Angles of the factory elbows [°]. */
  readonly elbows: readonly number[];
  /** Places where two of these meet, each with a coupling. */
  readonly joints: number;
}

/** Straight conduit no longer than this is none [in]: the saw's nearest sixteenth is nothing. */
const NO_LENGTH = 1 / 32;

/** A pull whose every bend is made in the shop: its pieces as the schedule has them. */
export const bentMaterial = (pull: BuiltPull): PullMaterial => ({
  pieces: pull.pieces.map((piece) => piece.cutLength),
  bends: pull.pieces.flatMap(pieceBends),
  elbows: [],
  joints: pull.joints.length,
});

const pieceBends = (piece: Piece): ShopBend[] =>
  piece.bends.map((bend, index) => ({ kind: bendKind(bend, piece.bends[index - 1]), angle: bend.angle }));

/**
 * A pull with factory elbows at every corner of one of `angles`; other corners are bent. An elbow is laid out at the
 * run's radius and without straight ends, so the conduit between elbows is the straight part of the legs, divided
 * into full sticks and a rest.
 *
 * @param stick [in]
 */
export function elbowMaterial(pull: BuiltPull, angles: readonly number[], stick: number): PullMaterial {
  const shopBends = pull.pieces.flatMap(pieceBends);
  const bends: ShopBend[] = [];
  const elbows: number[] = [];
  const stretches = [pull.parts.straights[0] ?? 0];
  pull.parts.bends.forEach(({ angle, radius }, place) => {
    const straight = pull.parts.straights[place + 1] ?? 0;
    if (isElbow(angle, angles)) {
      elbows.push(angle);
      stretches.push(straight);
    } else {
      bends.push(shopBends[place]!);
      stretches[stretches.length - 1]! += arcLength(angle, radius) + straight;
    }
  });
  const pieces = stretches.filter((length) => length > NO_LENGTH).flatMap((length) => fullSticks(length, stick));
  return { pieces, bends, elbows, joints: Math.max(0, pieces.length + elbows.length - 1) };
}

function fullSticks(length: number, stick: number): number[] {
  const pieces = Math.max(1, Math.ceil((length - NO_LENGTH) / stick));
  return [...Array<number>(pieces - 1).fill(stick), length - (pieces - 1) * stick];
}
