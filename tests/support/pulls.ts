import { pathParts } from "../../src/geometry/path";
import { pathSpans, type ArcSpan } from "../../src/geometry/span";
import { pullPath } from "../../src/route/problems";
import { readRoute } from "../../src/route/text/readRoute";
import { resolveRoute } from "../../src/route/resolveRoute";
import type { Pull } from "../../src/route/text/types";

export const resolve = (route: string, radius = 4, outsideDiameter?: number) =>
  resolveRoute(readRoute(route), radius, outsideDiameter).pulls;

/** The only pull of a route without boxes. */
export function onePull(route: string, radius = 4, outsideDiameter?: number): Pull {
  const [pull, ...more] = resolve(route, radius, outsideDiameter);
  if (!pull || more.length > 0) throw new Error("the route has one pull");
  return pull;
}

export const partsOf = (pull: Pull) => pathParts(pullPath(pull));
export const arcsOf = (pull: Pull) => pathSpans(pullPath(pull)).filter((span): span is ArcSpan => span.kind === "arc");
