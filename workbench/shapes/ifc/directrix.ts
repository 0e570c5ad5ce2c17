import { pathSpans, onSpan } from "../../../src/geometry/span";
import type { Path } from "../../../src/geometry/path";
import type { Vec3 } from "../../../src/geometry/vector";
import { NO_CONDUIT } from "../../../src/units/tolerances";
import { keyword, typed, whole, type StepFile, type Written } from "./stepFile";

/** Straights shorter than this are none [in]: a line of no length is an error. Tangent points are then one point. */
const NOTHING = NO_CONDUIT / 1000;

/** A centerline as a curve of lines and true arcs; an arc goes through its middle. */
export function directrix(file: StepFile, path: Path): Written {
  const spans = pathSpans(path).filter(({ length }) => length > NOTHING);
  const points: Vec3[] = [spans[0]!.point];
  const segments = spans.map((span) => {
    const first = points.length;
    if (span.kind === "arc") points.push(onSpan(span, span.length / 2).point);
    points.push(onSpan(span, span.length).point);
    const places = Array.from({ length: points.length - first + 1 }, (_, at) => whole(first + at));
    return typed(span.kind === "arc" ? "IFCARCINDEX" : "IFCLINEINDEX", places);
  });
  const list = file.add("IFCCARTESIANPOINTLIST3D", points);
  return file.add("IFCINDEXEDPOLYCURVE", list, segments, keyword("F"));
}
