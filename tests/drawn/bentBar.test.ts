/**
 * A bar bent by somebody else: the stirrup of buildingSMART's IFC4.3.x-sample-models (reinforcing-stirrup.ifc, Creative Commons
 * Attribution 4.0): points of its centerline [mm] as the file has them, straights and arcs by three points in turns. The file
 * states a length of 1,150 mm; its bends are drawn at 48 mm.
 */
import { angleBetween, subtract, type Vec3 } from "../../src/geometry/vector";
import { fitCorners } from "../../src/drawn/fit/fitCorners";
import { dxfOf, polyline, rowsOf } from "./support";

const STATED = 1150;
const RADIUS = 48;
const MM = 25.4;

const BAR: Vec3[] = [
  [-69, 0, -122],
  [-69, 0, -79],
  [-54.9411254969544, 0, -45.0588745030457],
  [-21.0000000000001, 0, -31], // prettier-ignore
  [21, 0, -31],
  [54.9411254969543, 0, -45.0588745030456],
  [69, 0, -78.9999999999999], // prettier-ignore
  [69, 0.00000000000000089, -321],
  [54.993978595716, 1.21791490472038, -354.941125496954],
  [21.1804517666064, 4.1582215855126, -369], // prettier-ignore
  [-20.6616529376114, 7.79666547283599, -369],
  [-54.4751797667207, 10.7369721536282, -354.941125496954],
  [-68.4812011710042, 11.9548870583485, -320.999999999999], // prettier-ignore
  [-69, 12, -79],
  [-54.9411254969544, 12, -45.0588745030457],
  [-21.0000000000001, 12, -31], // prettier-ignore
  [21, 12, -31],
  [54.9411254969543, 12, -45.0588745030456],
  [69, 12, -78.9999999999999],
  [69, 12, -122], // prettier-ignore
];

const minus = (a: Vec3, b: Vec3): Vec3 => subtract(a, b);
const dot = (a: Vec3, b: Vec3): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];

/** Points between the ends of an arc of three: from its chord and the height over it, as a drawing program puts them. */
function chords(from: Vec3, middle: Vec3, to: Vec3, count: number): Vec3[] {
  const center = from.map((value, axis) => (value + to[axis]!) / 2) as unknown as Vec3;
  const [half, height] = [minus(to, center), minus(middle, center)];
  const [chord, high] = [Math.sqrt(dot(half, half)), Math.sqrt(dot(height, height))];
  const radius = (chord ** 2 + high ** 2) / (2 * high);
  const turn = 2 * Math.atan(high / chord);
  return Array.from({ length: count - 1 }, (_, at) => {
    const angle = ((at + 1) / count) * 2 * turn - turn;
    const [along, over] = [(radius * Math.sin(angle)) / chord, (radius * Math.cos(angle) - (radius - high)) / high];
    return center.map((value, axis) => value + half[axis]! * along + height[axis]! * over) as unknown as Vec3;
  });
}

/** The whole bar in points; every bend in eight chords. */
const drawn = BAR.flatMap((point, at): Vec3[] => {
  if (at % 3 === 2) return [];
  return at % 3 === 1 && at < BAR.length - 1 ? [point, ...chords(point, BAR[at + 1]!, BAR[at + 2]!, 8)] : [point];
});

test("six bends of 90° and 48 mm are found, and the length within 0.2 % of what the file states", () => {
  const inches = drawn.map((point) => point.map((value) => value / MM) as unknown as Vec3);
  const { points, radii } = fitCorners(inches, 1e-6, 8);
  expect(radii).toHaveLength(6);
  for (const radius of radii) expect(Math.abs(radius * MM - RADIUS)).toBeLessThan(0.1);
  const legs = points.slice(1).map((point, at) => subtract(point, points[at]!));
  for (const [at, leg] of legs.slice(1).entries()) {
    expect(Math.abs((angleBetween(legs[at]!, leg) * 180) / Math.PI - 90)).toBeLessThan(0.6);
  }
  const [row] = rowsOf(dxfOf(polyline("bar", ...drawn)), 1 / MM).rows;
  expect(Math.abs(row!.drawnLength * MM - STATED) / STATED).toBeLessThan(0.002);
  // A shoe of 4 in. cannot bend it: the row says so, and how long it is all the same.
  expect(row!.taken).toBe(false);
});
