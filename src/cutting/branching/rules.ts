import type { Work } from "../model/work";

/** Two pieces, by number. */
export type Two = readonly [number, number];

/** Pieces that lie on one stick whatever else does. */
export interface Bundle {
  pieces: number[];
  weight: number;
}

/** What is taken for granted in a branch: pieces that share a stick, and pieces that do not. */
export class Rules {
  private readonly together: Two[] = [];
  private readonly apart: Two[] = [];

  constructor(private readonly weights: Int32Array) {}

  /** Takes one more thing for granted while `body` runs. */
  *assuming<T>(kind: "together" | "apart", two: Two, body: Generator<void, T>): Generator<void, T> {
    this[kind].push(two);
    try {
      return yield* body;
    } finally {
      this[kind].pop();
    }
  }

  /** May these pieces be all that lies on a stick? */
  allow(pieces: ReadonlySet<number>, work: Work): boolean {
    work.add(4 * (this.together.length + this.apart.length));
    return (
      this.together.every(([one, other]) => pieces.has(one) === pieces.has(other)) &&
      !this.apart.some(([one, other]) => pieces.has(one) && pieces.has(other))
    );
  }

  /**
   * The pieces in bundles, heaviest first, and for each bundle those before it that it may not lie with; undefined when
   * pieces of one bundle may not lie together.
   */
  bundles(): { bundles: Bundle[]; foes: number[][] } | undefined {
    const of = Array.from(this.weights, (_, piece) => piece);
    const root = (piece: number): number => (of[piece] === piece ? piece : root(of[piece]!));
    for (const [one, other] of this.together) of[root(one)] = root(other);
    const byRoot = new Map<number, Bundle>();
    this.weights.forEach((weight, piece) => {
      const bundle = byRoot.get(root(piece)) ?? { pieces: [], weight: 0 };
      bundle.pieces.push(piece);
      bundle.weight += weight;
      byRoot.set(root(piece), bundle);
    });
    const bundles = [...byRoot.values()].sort((a, b) => b.weight - a.weight);
    const place = new Map(bundles.flatMap(({ pieces }, k) => pieces.map((piece) => [piece, k])));
    const foes = bundles.map((): number[] => []);
    for (const [one, other] of this.apart) {
      const [a, b] = [place.get(one)!, place.get(other)!];
      if (a === b) return undefined;
      foes[Math.max(a, b)]!.push(Math.min(a, b));
    }
    return { bundles, foes };
  }
}
