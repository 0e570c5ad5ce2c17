import { cos, sin, toRadians } from "../../geometry/angle";
import type { Spot } from "./scene";
import type { Sketch } from "./sketch";
import { TEXT_SIZE } from "./textBox";

export type LineUpSymbol = "arrow" | "star" | "notch";

export const BUBBLE = TEXT_SIZE * 0.72;

/** A number in a circle. */
export function bubble(sketch: Sketch, center: Spot, number: number): void {
  sketch.circle(center, BUBBLE, "shape");
  sketch.text(String(number), center, "middle", "strong");
}

/** What on the shoe a mark is lined up with, about `size` each way from its center. */
export function lineUpSymbol(sketch: Sketch, symbol: LineUpSymbol, center: Spot, size = 6.5): void {
  const at = (x: number, y: number): Spot => [center[0] + x * size, center[1] + y * size];
  switch (symbol) {
    case "arrow":
      return sketch.line(
        [at(0, 1), at(-0.85, -0.1), at(-0.3, -0.1), at(-0.3, -1), at(0.3, -1), at(0.3, -0.1), at(0.85, -0.1)],
        "solid",
        { closed: true },
      );
    case "star":
      return sketch.line(
        Array.from({ length: 10 }, (_, point) => {
          const [reach, turn] = [point % 2 ? 0.45 : 1.1, toRadians(point * 36)];
          return at(reach * sin(turn), -reach * cos(turn));
        }),
        "solid",
        { closed: true },
      );
    case "notch":
      return sketch.line([at(-1, -0.8), at(-0.45, -0.8), at(0, 0.9), at(0.45, -0.8), at(1, -0.8)], "mark", {
        width: 1.75,
      });
  }
}
