/**
 * How a straight stick lies on the bench, and what a person does with it between two bends, told by the words.
 *
 * The bench: x from the hook to the free end, y to the left of one who looks that way, z up. It always bends upward.
 * What is kept is which end lies on the hook's side and where the chalk line points, as an angle [°] from y toward z.
 */
export interface Lie {
  readonly atHook: "datum" | "far";
  readonly chalk: number;
}

/** As the stick is picked up first: the datum end on the hook's side, the chalk line on top. */
export const PICKED_UP: Lie = { atHook: "datum", chalk: 90 };

const TOP = 90;

/** Follows words such as "swap the conduit end for end, last bend pointing as before; then turn 90° clockwise, …". */
export function follow(lie: Lie, words: string): Lie {
  return words.split("; ").reduce((now, clause) => obey(now, clause.replace(/^then /, "")), lie);
}

function obey(lie: Lie, words: string): Lie {
  if (words === "first bend" || words === "do not turn" || words === "slide to the mark") return lie;
  if (words === "put the far end on the hook's side") return swapped(lie);
  // The last bend points up, as the bench made it: about an upright axis it goes on pointing up.
  if (words === "swap the conduit end for end, last bend pointing as before") return swapped(lie);
  if (words === "turn 180°") return { ...lie, chalk: lie.chalk + 180 };
  const turn = /^turn ([\d.]+)° (clockwise|counterclockwise), seen from the datum end$/.exec(words);
  if (!turn) throw new Error(`nobody knows what to do with: ${words}`);
  const clockwise = Number(turn[1]) * (turn[2] === "clockwise" ? 1 : -1);
  // From the hook along x, clockwise goes from left (y) over the top (z); from the free end it goes the other way.
  return { ...lie, chalk: lie.chalk + (lie.atHook === "datum" ? clockwise : -clockwise) };
}

/** Turned end for end about an upright axis: left becomes right, up stays up. */
const swapped = ({ atHook, chalk }: Lie): Lie => ({ atHook: atHook === "datum" ? "far" : "datum", chalk: 180 - chalk });

/** How far round from the chalk line the bench's upward bend curls [°], clockwise for one at the datum end. */
export const curl = ({ atHook, chalk }: Lie): number => (atHook === "datum" ? TOP - chalk : chalk - TOP);
