import { arcLength } from "../../geometry/arc";

/**
 * Radii of conduits that turn around one center, side by side.
 *
 * @param radius [in] of the innermost @param spacing [in] center to center @param count of conduits
 * @param angle [°] that all turn
 * @returns radius [in] and length of arc [in] of each, from the inside out
 * @example concentricGroup(24, 3, 2)[1] //=> { conduit: 2, radius: 27, arc: 42.4115 }
 */
export function concentricGroup(
  radius: number,
  spacing: number,
  count: number,
  angle = 90,
): { conduit: number; radius: number; arc: number }[] {
  return Array.from({ length: count }, (_, place) => {
    const own = radius + place * spacing;
    return { conduit: place + 1, radius: own, arc: arcLength(angle, own) };
  });
}
