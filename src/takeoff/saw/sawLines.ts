import type { Drop } from "./drops";

/** Sticks that are cut alike, as a cutting plan has them. Lengths [in]. */
export interface SawStick {
  readonly length: number;
  readonly count: number;
  /** Where the sticks come from, when they are not new ones. */
  readonly label?: string;
  readonly pieces: readonly SawPiece[];
  /** What is left of each, kerfs taken off. */
  readonly remnant: number;
  readonly drop?: Drop;
}

export interface SawPiece {
  readonly length: number;
  readonly count: number;
  /** The runs and pieces it is for. */
  readonly label?: string;
}

/**
 * One way to cut a stick, as the person at the saw does it: which sticks to take, each cut in order with what it is
 * for, what is left.
 *
 * @param show how lengths are written, with their unit
 * @example sawLines({ length: 120, count: 2, pieces: [{ length: 50, count: 2, label: "A/1 ×4" }], remnant: 19.875 }, show)
 * //=> ["Take 2 sticks of 10' 0\"; from each:", "cut 2 at 4' 2\": A/1 ×4", "left over 1' 7-7/8\""]
 * with the drop { names: "drop 1 to 2", goesTo: "Stock" } //=> "left over 1' 7-7/8\": mark drop 1 to 2, to Stock"
 */
export function sawLines(
  { length, count, label, pieces, remnant, drop }: SawStick,
  show: (inches: number) => string,
): string[] {
  const from = label ? ` ${label}` : "";
  const take = `Take ${count} ${count === 1 ? "stick" : "sticks"} of ${show(length)}${from}; from ${count === 1 ? "it" : "each"}:`;
  return [
    take,
    ...pieces.map((piece) => {
      const whole = piece.length === length;
      const cut = whole ? "use it whole, no cut" : `cut ${piece.count} at ${show(piece.length)}`;
      return piece.label ? `${cut}: ${piece.label}` : cut;
    }),
    remnant > 0 ? `left over ${show(remnant)}${dropWords(drop)}` : "nothing left over",
  ];
}

const dropWords = (drop: Drop | undefined): string =>
  drop === undefined ? "" : drop.goesTo === "Stock" ? `: mark ${drop.names}, to Stock` : ", scrap";
