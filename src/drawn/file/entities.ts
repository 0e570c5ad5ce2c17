import { InputError } from "../../units/errors";
import { toRadians } from "../../geometry/angle";
import type { Vec3 } from "../../geometry/vector";
import { arcPoints, bulgePoints, splinePoints } from "./curves";
import { numberOf, textOf, type DxfObject } from "./dxfGroups";
import { fromOwnFrame } from "./ocs";

/** The number of each group of a code. */
const numbersOf = ({ groups }: DxfObject, code: number): number[] =>
  groups.filter(([own]) => own === code).map(([, value]) => Number(value));

const pointOf = (object: DxfObject, first: number): Vec3 => [
  numberOf(object, first, 0),
  numberOf(object, first + 10, 0),
  numberOf(object, first + 20, 0),
];

export const extrusionOf = (object: DxfObject): Vec3 => [
  numberOf(object, 210, 0),
  numberOf(object, 220, 0),
  numberOf(object, 230, 1),
];

/** Flags of a polyline (AutoCAD DXF reference, POLYLINE and VERTEX, group 70). */
const [CLOSED, IN_SPACE, MESHES, FRAME] = [1, 8, 16 | 64, 16];

/** A vertex of a flat polyline, and what its side to the next one bulges. */
type Vertex = readonly [point: Vec3, bulge: number];

/** What an object comes to: its points, or why it has none. */
export type Points = readonly Vec3[] | { readonly why: string };

/** Points of the objects that can be conduit. @param vertices those that belong to a POLYLINE */
export const READERS: Readonly<Record<string, (object: DxfObject, vertices: readonly DxfObject[]) => Points>> = {
  LINE: (object) => [pointOf(object, 10), pointOf(object, 11)],
  ARC: (object) => {
    const [from, to] = [numberOf(object, 50, 0), numberOf(object, 51, 360)];
    const turn = (((to - from) % 360) + 360) % 360 || 360;
    const points = arcPoints(pointOf(object, 10), numberOf(object, 40, 0), toRadians(from), toRadians(turn));
    return points.map(fromOwnFrame(extrusionOf(object)));
  },
  LWPOLYLINE: (object) => {
    if (numberOf(object, 70, 0) & CLOSED) return closed;
    const up = numberOf(object, 38, 0);
    const vertices: [Vec3, number][] = [];
    for (const [code, value] of object.groups) {
      const last = vertices.at(-1);
      if (code === 10) vertices.push([[Number(value), 0, up], 0]);
      else if (code === 20 && last) last[0] = [last[0][0], Number(value), up];
      else if (code === 42 && last) last[1] = Number(value);
    }
    return flat(vertices).map(fromOwnFrame(extrusionOf(object)));
  },
  POLYLINE: (object, vertices) => {
    const flags = numberOf(object, 70, 0);
    if (flags & MESHES) return { why: "a mesh is no conduit" };
    if (flags & CLOSED) return closed;
    const own = vertices.filter((vertex) => !(numberOf(vertex, 70, 0) & FRAME));
    // Some programs forget the flag and say it in the class alone.
    const inSpace =
      flags & IN_SPACE || object.groups.some(([code, value]) => code === 100 && value === "AcDb3dPolyline");
    if (inSpace) return own.map((vertex) => pointOf(vertex, 10));
    const up = numberOf(object, 30, 0);
    const flatVertices = own.map((vertex): Vertex => {
      const [x, y] = pointOf(vertex, 10);
      return [[x, y, up], numberOf(vertex, 42, 0)];
    });
    return flat(flatVertices).map(fromOwnFrame(extrusionOf(object)));
  },
  SPLINE: (object) => {
    if (numberOf(object, 70, 0) & CLOSED) return closed;
    const [xs, ys, zs] = [10, 20, 30].map((code) => numbersOf(object, code));
    const control = xs!.map((x, at): Vec3 => [x, ys![at] ?? 0, zs![at] ?? 0]);
    const [degree, knots] = [numberOf(object, 71, 3), numbersOf(object, 40)];
    if (control.length <= degree || knots.length !== control.length + degree + 1) {
      return { why: "it has no control points and knots that fit together" };
    }
    return splinePoints(degree, knots, control, numbersOf(object, 41));
  },
};

const closed = { why: "it is closed: a conduit has two ends" };

const flat = (vertices: readonly Vertex[]): Vec3[] =>
  vertices.flatMap(([point, bulge], at) => {
    const next = vertices[at + 1];
    return next ? bulgePoints(point, next[0], bulge).slice(0, -1) : [point];
  });

/** Where a POINT stands, or an INSERT puts its block. */
export const placeOf = (object: DxfObject): Vec3 => pointOf(object, 10);

/** The layer an object lies on. */
export const layerOf = (object: DxfObject): string => textOf(object, 8) ?? "0";

/** @throws InputError for a point that is none */
export function checkPoints(points: readonly Vec3[]): void {
  if (points.flat().every(Number.isFinite)) return;
  throw new InputError("a coordinate is no number");
}
