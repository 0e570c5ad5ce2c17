import type { Degrees } from "../../geometry/angle";
import type { BuiltPull, FactoryElbow, Piece } from "../../shop/run/builtRun";
import { bendKind, type BendKind } from "../../shop/schedule/lineUp";

/** A bend the shop makes. */
export interface ShopBend {
  readonly kind: BendKind;
  /** [°] */
  readonly angle: Degrees;
}

/** What a pull is made of, from box to box. */
export interface PullMaterial {
  /** Cut lengths [in]. */
  readonly pieces: readonly number[];
  readonly bends: readonly ShopBend[];
  readonly elbows: readonly FactoryElbow[];
  /** Places where two of these meet, each with a coupling. */
  readonly joints: number;
}

/** The pieces and elbows of a pull as the schedule has them. */
export const pullMaterial = ({ pieces, elbows, joints }: BuiltPull): PullMaterial => ({
  pieces: pieces.map(({ cutLength }) => cutLength),
  bends: pieces.flatMap(shopBends),
  elbows,
  joints: joints.length,
});

/** The bends of a piece that the shop makes. */
export const shopBends = ({ bends }: Piece): ShopBend[] =>
  bends.map((bend, index) => ({ kind: bendKind(bend, bends[index - 1]), angle: bend.angle }));
