import type { Vec3 } from "../../geometry/vector";

/** A line of a drawing as its points, arcs as points on them [drawing units]. */
export interface DrawnLine {
  readonly layer: string;
  /** What the drawing calls it; empty where it says nothing. */
  readonly handle: string;
  readonly points: readonly Vec3[];
}

/** A point that stands alone: where two lines meet, it is a box. */
export interface DrawnPoint {
  readonly layer: string;
  readonly at: Vec3;
}

/** Something that is no conduit or cannot be read, and why. */
export interface NotRead {
  readonly layer: string;
  readonly what: string;
  readonly why: string;
  /** [drawing units] */
  readonly at?: Vec3;
  readonly times: number;
}

/** What was read of a drawing. */
export interface Drawing {
  /** Inches in a drawing unit; null where the drawing does not say. */
  readonly unit: number | null;
  /** True for a list whose lengths say their units themselves: it is in inches, and nobody may say otherwise. */
  readonly lengthsSayUnits?: boolean;
  /** Decimals its coordinates are written with, at most. */
  readonly decimals: number;
  readonly lines: readonly DrawnLine[];
  readonly points: readonly DrawnPoint[];
  readonly notRead: readonly NotRead[];
  /** What a list of points says of a run, by its name. */
  readonly conduits?: ReadonlyMap<string, { readonly raceway: string; readonly size: string }>;
}

/** Adds up what is the same: nine texts are one line. */
export function gathered(notRead: readonly NotRead[]): NotRead[] {
  const found = new Map<string, NotRead>();
  for (const one of notRead) {
    const key = one.at ? `${found.size}` : [one.layer, one.what, one.why].join("\n");
    const before = found.get(key);
    found.set(key, before ? { ...before, times: before.times + one.times } : one);
  }
  return [...found.values()];
}
