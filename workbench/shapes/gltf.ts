import { ORIGIN, type Vec3 } from "../../src/geometry/vector";
import { pullPath } from "../../src/route/problems";
import type { BuiltRun } from "../../src/shop/run/builtRun";
import { curveOf } from "./pieceShape";
import { around, tube, type TubePoint } from "./tube";

/** Meters in an inch, by definition. */
const METERS = 0.0254;

/** An inch vector of ours (x east, y north, z up) in the axes of glTF: y up, the viewer in the south. */
const turned = ([east, north, up]: Vec3): [number, number, number] => [east, up, -north];
const inMeters = (vector: Vec3): number[] => turned(vector).map((value) => value * METERS);

/**
 * Runs as tubes in one binary glTF 2.0 file (Khronos), a node for each run at its place, which says its raceway, size and
 * route: meters, y up.
 */
export function runsGlb(runs: readonly BuiltRun[]): Uint8Array {
  const buffer = new Buffers();
  const drawn = runs.map((built) => meshOf(built, buffer));
  const json = {
    asset: { version: "2.0", generator: "Raceway Ledger" },
    scene: 0,
    scenes: [{ nodes: runs.map((_, index) => index) }],
    nodes: runs.map(({ run }, mesh) => ({
      name: run.name,
      mesh,
      translation: inMeters(run.start ?? ORIGIN),
      extras: { raceway: run.raceway, size: run.size, route: run.route },
    })),
    meshes: runs.map(({ run }, index) => ({ name: run.name, primitives: drawn[index]! })),
    materials: [
      {
        name: "conduit",
        // Open at the ends: the inside is seen as well.
        doubleSided: true,
        pbrMetallicRoughness: { baseColorFactor: [0.62, 0.64, 0.67, 1], metallicFactor: 0.6, roughnessFactor: 0.5 },
      },
    ],
    accessors: buffer.accessors,
    bufferViews: buffer.views,
    buffers: [{ byteLength: buffer.length }],
  };
  return container(new TextEncoder().encode(JSON.stringify(json)), buffer.bytes());
}

/** The tubes of a run, one for each pull, as primitives of one mesh. */
function meshOf({ pulls, shoe }: BuiltRun, buffer: Buffers) {
  return pulls.map(({ pull }) => {
    const rings = tube(curveOf(pullPath(pull)), shoe.outsideDiameter / 2);
    const points = rings.flat();
    return {
      attributes: {
        POSITION: buffer.vectors(points, ({ point }) => inMeters(point)),
        NORMAL: buffer.vectors(points, ({ outward }) => turned(outward)),
      },
      indices: buffer.indices(triangles(rings.length)),
      material: 0,
    };
  });
}

function triangles(rings: number): number[] {
  const corner = (ring: number, at: number): number => ring * around + (at % around);
  return Array.from({ length: rings - 1 }, (_, ring) =>
    Array.from({ length: around }, (_, at) => {
      const [a, b] = [corner(ring, at), corner(ring, at + 1)];
      const [c, d] = [corner(ring + 1, at + 1), corner(ring + 1, at)];
      return [a, b, c, a, c, d];
    }),
  ).flat(2);
}

/** glTF's numbers for what an array holds and what it is for (glTF 2.0, 3.6.2 and 5.11). */
const [FLOAT, UNSIGNED_INT, VERTICES, INDICES] = [5126, 5125, 34962, 34963];

/** The numbers of all meshes, and where each array of them stands; every one is a whole number of four bytes. */
class Buffers {
  readonly accessors: object[] = [];
  readonly views: object[] = [];
  private readonly parts: (Float32Array | Uint32Array)[] = [];
  length = 0;

  /** @returns the accessor's place */
  vectors(points: readonly TubePoint[], of: (point: TubePoint) => readonly number[]): number {
    const array = new Float32Array(points.flatMap(of));
    const axis = (at: number) => array.filter((_, index) => index % 3 === at);
    const ends = (pick: (a: number, b: number) => number) => [0, 1, 2].map((at) => axis(at).reduce(pick));
    const range = { min: ends((a, b) => Math.min(a, b)), max: ends((a, b) => Math.max(a, b)) };
    return this.add(array, VERTICES, { componentType: FLOAT, type: "VEC3", count: points.length, ...range });
  }

  indices(indices: readonly number[]): number {
    const facts = { componentType: UNSIGNED_INT, type: "SCALAR", count: indices.length };
    return this.add(new Uint32Array(indices), INDICES, facts);
  }

  bytes(): Uint8Array {
    const all = new Uint8Array(this.length);
    let at = 0;
    for (const { buffer, byteLength } of this.parts) {
      all.set(new Uint8Array(buffer), at);
      at += byteLength;
    }
    return all;
  }

  private add(array: Float32Array | Uint32Array, target: number, facts: object): number {
    this.views.push({ buffer: 0, byteOffset: this.length, byteLength: array.byteLength, target });
    this.accessors.push({ bufferView: this.views.length - 1, ...facts });
    this.parts.push(array);
    this.length += array.byteLength;
    return this.accessors.length - 1;
  }
}

/** The binary container: a header, a chunk of JSON and a chunk of bytes, each filled up to four (glTF 2.0, 4.4). */
function container(json: Uint8Array, bytes: Uint8Array): Uint8Array {
  const padded = (length: number): number => Math.ceil(length / 4) * 4;
  const [jsonLength, length] = [padded(json.length), 28 + padded(json.length) + bytes.length];
  const file = new Uint8Array(length).fill(0x20);
  const view = new DataView(file.buffer);
  const words = (at: number, ...values: number[]) =>
    values.forEach((value, index) => view.setUint32(at + 4 * index, value, true));
  words(0, 0x46546c67, 2, length, jsonLength, 0x4e4f534a);
  file.set(json, 20);
  words(20 + jsonLength, bytes.length, 0x004e4942);
  file.set(bytes, 28 + jsonLength);
  return file;
}
