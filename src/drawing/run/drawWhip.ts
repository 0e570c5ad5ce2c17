import type { Spot } from "../paper/scene";
import type { Sketch } from "../paper/sketch";
import { move, perpendicular, spread, toward } from "../paper/spots";

/** Half a wave for so many pixels, and how far it swings. */
const [WAVE, SWING] = [6, 3];

/** A flexible piece: a wavy line from end to end. */
export function drawWhip(sketch: Sketch, from: Spot, to: Spot): void {
  const waves = Math.max(2, Math.round(spread(from, to) / WAVE));
  const [way, side] = [toward(from, to), perpendicular(toward(from, to))];
  const length = spread(from, to);
  const spots = Array.from({ length: waves + 1 }, (_, place): Spot => {
    const on = move(from, way, (length * place) / waves);
    return place === 0 || place === waves ? on : move(on, side, place % 2 === 0 ? -SWING : SWING);
  });
  sketch.line(spots, "conduit-thin", { width: 1.5 });
}
