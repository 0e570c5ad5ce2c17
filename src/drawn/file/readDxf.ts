import { isUserError } from "../../units/errors";
import { cos, sin, toRadians } from "../../geometry/angle";
import { add, type Vec3 } from "../../geometry/vector";
import { gathered, type Drawing, type DrawnLine, type DrawnPoint, type NotRead } from "./drawing";
import { dxfSections, numberOf, textOf, type DxfObject } from "./dxfGroups";
import { checkPoints, extrusionOf, layerOf, placeOf, READERS } from "./entities";
import { fromOwnFrame, type Transform } from "./ocs";

/** Inches in the units of $INSUNITS (AutoCAD DXF reference, header): 0 is "none". */
const UNITS: Readonly<Record<number, number>> = {
  1: 1,
  2: 12,
  4: 1 / 25.4,
  5: 1 / 2.54,
  6: 1 / 0.0254,
  10: 36,
  14: 1 / 0.254,
};

/** More decimals than this tell nothing. */
const MOST_DECIMALS = 8;
/** Blocks in blocks deeper than this are a circle. */
const DEEPEST = 16;
/** Most lines that are taken, whatever blocks repeat. */
const MOST_LINES = 100_000;

interface Placed {
  readonly transform: Transform;
  /** Layer of the INSERT, which lines on layer 0 of its block lie on. */
  readonly layer?: string;
  readonly depth: number;
}

/**
 * Reads the lines of an ASCII DXF (AutoCAD DXF reference): LINE, ARC, LWPOLYLINE and POLYLINE, flat with bulges or in space,
 * SPLINE, and blocks in blocks. Whatever else there is, lies on a layer that is off or frozen, or cannot be read is told.
 *
 * @throws InputError for a file that is no ASCII DXF
 */
export function readDxf(text: string): Drawing {
  const sections = dxfSections(text);
  const reading = new Reading(hiddenLayers(sections.get("TABLES") ?? []), blocksOf(sections.get("BLOCKS") ?? []));
  reading.take(sections.get("ENTITIES")!, { transform: (point) => point, depth: 0 });
  const header = (sections.get("HEADER") ?? []).find(({ type }) => type === "$INSUNITS");
  return {
    unit: (header && UNITS[numberOf(header, 70, 0)]) ?? null,
    decimals: reading.decimals,
    lines: reading.lines,
    points: reading.points,
    notRead: gathered(reading.notRead),
  };
}

function hiddenLayers(tables: readonly DxfObject[]): Map<string, string> {
  const hidden = new Map<string, string>();
  for (const layer of tables.filter(({ type }) => type === "LAYER")) {
    const name = textOf(layer, 2);
    if (name === undefined) continue;
    if (numberOf(layer, 62, 7) < 0) hidden.set(name, "its layer is off");
    else if (numberOf(layer, 70, 0) & 1) hidden.set(name, "its layer is frozen");
  }
  return hidden;
}

interface Block {
  readonly base: Vec3;
  readonly objects: DxfObject[];
}

function blocksOf(objects: readonly DxfObject[]): Map<string, Block> {
  const blocks = new Map<string, Block>();
  let open: Block | undefined;
  for (const object of objects) {
    if (object.type === "BLOCK") {
      open = { base: placeOf(object), objects: [] };
      blocks.set((textOf(object, 2) ?? "").toLowerCase(), open);
    } else if (object.type === "ENDBLK") open = undefined;
    else open?.objects.push(object);
  }
  return blocks;
}

class Reading {
  readonly lines: DrawnLine[] = [];
  readonly points: DrawnPoint[] = [];
  readonly notRead: NotRead[] = [];
  decimals = 0;

  constructor(
    private readonly hidden: ReadonlyMap<string, string>,
    private readonly blocks: ReadonlyMap<string, Block>,
  ) {}

  take(objects: readonly DxfObject[], placed: Placed): void {
    for (let at = 0; at < objects.length; at += 1) {
      const object = objects[at]!;
      const vertices: DxfObject[] = [];
      if (object.type === "POLYLINE") {
        while (objects[at + 1]?.type === "VERTEX") vertices.push(objects[(at += 1)]!);
        if (objects[at + 1]?.type === "SEQEND") at += 1;
      }
      try {
        this.takeOne(object, vertices, placed);
      } catch (error) {
        if (!isUserError(error)) throw error;
        this.leave(object, placed, error.message);
      }
    }
  }

  private takeOne(object: DxfObject, vertices: readonly DxfObject[], placed: Placed): void {
    const layer = this.layerOf(object, placed);
    const why = this.hidden.get(layer);
    if (why) return this.leave(object, placed, why);
    if (numberOf(object, 60, 0) === 1) return this.leave(object, placed, "it is hidden");
    if (numberOf(object, 67, 0) === 1) return this.leave(object, placed, "it stands on paper, not in the model");
    if (object.type === "INSERT") return this.insert(object, placed);
    if (object.type === "POINT") return void this.points.push({ layer, at: placed.transform(placeOf(object)) });
    const read = READERS[object.type];
    if (!read) return this.leave(object, placed, "it is no line");
    const points = read(object, vertices);
    if ("why" in points) return this.leave(object, placed, points.why);
    checkPoints(points);
    if (points.length < 2) return this.leave(object, placed, "it has no length");
    if (this.lines.length >= MOST_LINES) return this.leave(object, placed, `at most ${MOST_LINES} lines are read`);
    this.count([object, ...vertices]);
    this.lines.push({ layer, handle: textOf(object, 5) ?? "", points: points.map(placed.transform) });
  }

  private insert(object: DxfObject, placed: Placed): void {
    const block = this.blocks.get((textOf(object, 2) ?? "").toLowerCase());
    if (!block) return this.leave(object, placed, "its block is not in the drawing");
    if (placed.depth >= DEEPEST) return this.leave(object, placed, "its blocks hold each other");
    const at = placeOf(object);
    const scales = [41, 42, 43].map((code) => numberOf(object, code, 1)) as unknown as Vec3;
    const turn = toRadians(numberOf(object, 50, 0));
    const own = fromOwnFrame(extrusionOf(object));
    const [cosine, sine] = [cos(turn), sin(turn)];
    const [columns, rows] = [Math.max(1, numberOf(object, 70, 1)), Math.max(1, numberOf(object, 71, 1))];
    for (let place = 0; place < columns * rows; place += 1) {
      const [along, across] = [
        (place % columns) * numberOf(object, 44, 0),
        Math.floor(place / columns) * numberOf(object, 45, 0),
      ];
      const transform: Transform = (point) => {
        const [x, y, z] = point.map((value, axis) => (value - block.base[axis]!) * scales[axis]!) as unknown as Vec3;
        const [u, v] = [x + along, y + across];
        return placed.transform(own(add([u * cosine - v * sine, u * sine + v * cosine, z], at)));
      };
      this.take(block.objects, { transform, layer: this.layerOf(object, placed), depth: placed.depth + 1 });
    }
  }

  private layerOf(object: DxfObject, { layer }: Placed): string {
    const own = layerOf(object);
    return own === "0" && layer !== undefined ? layer : own;
  }

  private leave(object: DxfObject, placed: Placed, why: string): void {
    const isLine = object.type in READERS && why !== "its layer is off" && why !== "its layer is frozen";
    const handle = isLine ? textOf(object, 5) : undefined;
    const what = handle === undefined ? object.type : `${object.type} ${handle}`;
    this.notRead.push({ layer: this.layerOf(object, placed), what, why, times: 1 });
  }

  /** Decimals that the coordinates are written with, without zeros at the end. */
  private count(objects: readonly DxfObject[]): void {
    for (const { groups } of objects) {
      for (const [code, value] of groups) {
        if (code < 10 || code > 39) continue;
        const written = /\.(\d*?)0*$/.exec(value)?.[1]?.length ?? (/e/i.test(value) ? 12 : 0);
        this.decimals = Math.max(this.decimals, Math.min(written, MOST_DECIMALS));
      }
    }
  }
}
