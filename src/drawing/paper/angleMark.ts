import { atan2, cos, sin, plus, times } from "../../geometry/angle";
import type { Spot } from "./scene";
import type { Sketch } from "./sketch";
import { move, perpendicular, toward } from "./spots";

/**
 * An angle at a corner: the way in goes on as a thin line, and an arc runs from it to the way out. The text stands at
 * the arc or, where that is taken, further round.
 */
export function angleMark(sketch: Sketch, corner: Spot, into: Spot, out: Spot, text: string, radius = 30): void {
  sketch.line([corner, move(corner, into, radius + 8)], "extension");
  const start = atan2(into[1], into[0]);
  const turn = atan2(into[0] * out[1] - into[1] * out[0], into[0] * out[0] + into[1] * out[1]);
  const steps = Math.max(2, Math.ceil(Math.abs(turn) / 0.1));
  const at = (share: number, reach: number): Spot => [
    corner[0] + reach * cos(plus(start, times(turn, share))),
    corner[1] + reach * sin(plus(start, times(turn, share))),
  ];
  sketch.line(
    Array.from({ length: steps + 1 }, (_, step) => at(step / steps, radius)),
    "extension",
  );
  const reaches = [6, 12, 20, 30].flatMap((more) => [0.5, 0.2, 0.8].map((share) => at(share, radius + more)));
  const outside = [12, 20, 28].map((off) =>
    move(move(corner, into, radius), perpendicular(into), turn > 0 ? off : -off),
  );
  sketch.label(
    text,
    [...reaches, ...outside].map((spot) => ({ at: spot, anchor: anchorFrom(toward(corner, spot)) })),
  );
}

const anchorFrom = ([x]: Spot): "start" | "middle" | "end" => (x > 0.3 ? "start" : x < -0.3 ? "end" : "middle");
