/**
 * IFC4 read back by a reader of STEP text that shares nothing with the writer. Numbers of attributes are those of the IFC4
 * ADD2 TC1 schema (buildingSMART), written from memory; web-ifc 0.0.78, which is no part of this repository, read the
 * demo's file without complaint when it had 29 segments: schema IFC4, boxes as the routes say.
 */
import { buildJob, builtRows } from "../../../src/shop/job/job";
import { demoRuns } from "../../../workbench/demo/ferryTerminal";
import { globalId } from "../../../workbench/shapes/ifc/globalId";
import { runsIfc } from "../../../workbench/shapes";
import { readStepText, type StepData, type StepEntity } from "../../support/stepText";

const MADE = "2026-12-01T08:00:00";
const runsOf = (rows: readonly (readonly unknown[])[]) =>
  builtRows(buildJob({ runs: rows as unknown[][] })).map(({ built }) => built);
const demo = runsOf(demoRuns);
const demoText = runsIfc(demo, "Ferry terminal", MADE);
const file = readStepText(demoText);

const all = (type: string, from = file): StepEntity[] => [...from.values()].filter((entity) => entity.type === type);
const at = (value: StepData | undefined, from = file): StepEntity => from.get((value as { ref: number }).ref)!;

type Point = [number, number, number];
const minus = (a: Point, b: Point): Point => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
const dot = (a: Point, b: Point): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
const times = (a: Point, by: number): Point => [a[0] * by, a[1] * by, a[2] * by];
const plus = (a: Point, b: Point): Point => [a[0] + b[0], a[1] + b[1], a[2] + b[2]];
const size = (a: Point): number => Math.hypot(...a);

/** An arc by three points: its length, and where its tangents meet. From the chord, the height over it and Pythagoras. */
function arcBy(from: Point, middle: Point, to: Point): { length: number; corner: Point } {
  const half = size(minus(to, from)) / 2;
  const center = times(plus(from, to), 0.5);
  const rise = minus(middle, center);
  const height = size(rise);
  expect(Math.abs(dot(rise, minus(to, from)))).toBeLessThan(1e-9 * (1 + half));
  const radius = (half ** 2 + height ** 2) / (2 * height);
  const turn = 4 * Math.atan(height / half);
  const toCorner = (half * Math.tan(turn / 2)) / height;
  return { length: radius * turn, corner: plus(center, times(rise, toCorner)) };
}

/** A directrix walked: its length and its corners with both ends [in]. */
function walk(curve: StepEntity, from = file): { length: number; points: Point[] } {
  expect(curve.type).toBe("IFCINDEXEDPOLYCURVE");
  const points = at(curve.values[0], from).values[0] as unknown as Point[];
  const walked = { length: 0, points: [points[0]!] };
  let reached = 1;
  for (const segment of curve.values[1] as { type: string; value: [number[]] }[]) {
    const places = segment.value[0];
    expect(places[0]).toBe(reached);
    reached = places.at(-1)!;
    const spots = places.map((place) => points[place - 1]!) as [Point, Point, Point];
    if (segment.type === "IFCLINEINDEX") {
      const length = size(minus(spots[1], spots[0]));
      expect(length).toBeGreaterThan(1e-5);
      walked.length += length;
    } else {
      const { length, corner } = arcBy(...spots);
      walked.length += length;
      walked.points.push(corner);
    }
  }
  expect(reached).toBe(points.length);
  walked.points.push(points.at(-1)!);
  return walked;
}

const shapesOf = (segment: StepEntity, from = file): StepEntity[] =>
  (at(segment.values[6], from).values[2] as StepData[]).map((shape) => at(shape, from));

test("up 10, east 96 in EMT 1/2, by hand: two straights and a quarter of a circle of 4 in.", () => {
  const one = readStepText(
    runsIfc(
      runsOf([
        ["Run", "Raceway", "Size", "Route", "Start"],
        ["A", "EMT", "1/2", "up 10, east 96", "100 20 3"],
      ]),
      "J",
      MADE,
    ),
  );
  const [segment] = all("IFCCABLECARRIERSEGMENT", one);
  const [axis, body] = shapesOf(segment!, one);
  expect([axis!.values[1], body!.values[1], body!.values[2]]).toEqual(["Axis", "Body", "AdvancedSweptSolid"]);
  const solid = at((body!.values[3] as StepData[])[0], one);
  // NEC chapter 9, table 4: EMT 1/2 is 0.622 in. inside; ANSI C80.3: 0.706 in. outside.
  expect(solid.values.slice(1)).toEqual([0.353, 0.311, null, null]);
  const { length, points } = walk(at(solid.values[0], one), one);
  expect(length).toBeCloseTo(6 + 2 * Math.PI + 92, 9);
  [
    [0, 0, 0],
    [0, 0, 10],
    [96, 0, 10],
  ].forEach((point, index) => expect(size(minus(points[index]!, point as Point))).toBeLessThan(1e-9));
  // Where it stands: its own placement in the building's.
  const placement = at(at(segment!.values[5], one).values[1], one);
  expect(at(placement.values[0], one).values[0]).toEqual([100, 20, 3]);
});

test("every pull of the demo comes back with its length and its corners", () => {
  const segments = all("IFCCABLECARRIERSEGMENT");
  const pulls = demo.flatMap((built) => built.pulls.map((pull) => ({ pull, built })));
  expect(segments).toHaveLength(pulls.length);
  const quantities = all("IFCQUANTITYLENGTH");
  segments.forEach((segment, index) => {
    const { pull, built } = pulls[index]!;
    const [axis, body] = shapesOf(segment);
    const solid = at((body!.values[3] as StepData[])[0]);
    expect((axis!.values[3] as StepData[])[0]).toEqual(solid.values[0]);
    const { length, points } = walk(at(solid.values[0]));
    expect(Math.abs(length - pull.parts.developed)).toBeLessThan(1e-8);
    expect(quantities[index]!.values[3]).toBeCloseTo(length, 8);
    expect(points).toHaveLength(pull.pull.points.length);
    points.forEach((point, at) =>
      expect(size(minus(point, pull.pull.points[at] as unknown as Point))).toBeLessThan(1e-7),
    );
    expect(Number(solid.values[1])).toBeGreaterThan(Number(solid.values[2]));
    expect(String(segment.values[2])).toContain(built.run.name);
    expect(segment.values[8]).toEqual({ word: "CONDUITSEGMENT" });
  });
});

/** Explicit attributes, inherited ones counted. */
const ATTRIBUTES = {
  IFCPROJECT: 9,
  IFCSITE: 14,
  IFCBUILDING: 12,
  IFCCABLECARRIERSEGMENT: 9,
  IFCCABLECARRIERSEGMENTTYPE: 10,
  IFCRELAGGREGATES: 6,
  IFCRELCONTAINEDINSPATIALSTRUCTURE: 6,
  IFCRELDEFINESBYTYPE: 6,
  IFCRELDEFINESBYPROPERTIES: 6,
  IFCPROPERTYSET: 5,
  IFCPROPERTYSINGLEVALUE: 4,
  IFCELEMENTQUANTITY: 6,
  IFCQUANTITYLENGTH: 5,
  IFCGEOMETRICREPRESENTATIONCONTEXT: 6,
  IFCGEOMETRICREPRESENTATIONSUBCONTEXT: 10,
  IFCLOCALPLACEMENT: 2,
  IFCAXIS2PLACEMENT3D: 3,
  IFCCARTESIANPOINT: 1,
  IFCCARTESIANPOINTLIST3D: 1,
  IFCINDEXEDPOLYCURVE: 3,
  IFCSWEPTDISKSOLID: 5,
  IFCSHAPEREPRESENTATION: 4,
  IFCPRODUCTDEFINITIONSHAPE: 3,
  IFCUNITASSIGNMENT: 1,
  IFCSIUNIT: 4,
  IFCCONVERSIONBASEDUNIT: 4,
  IFCMEASUREWITHUNIT: 2,
  IFCDIMENSIONALEXPONENTS: 7,
} as const;

test("every entity has as many attributes as the schema gives it, and refers to what is there", () => {
  const refs = (value: StepData): number[] => {
    if (Array.isArray(value)) return value.flatMap(refs);
    return value !== null && typeof value === "object" && "ref" in value ? [value.ref] : [];
  };
  for (const { type, values } of file.values()) {
    expect([type, values.length]).toEqual([type, ATTRIBUTES[type as keyof typeof ATTRIBUTES]]);
    for (const ref of values.flatMap(refs)) expect(file.has(ref)).toBe(true);
  }
  expect(new Set([...file.values()].map(({ type }) => type))).toEqual(new Set(Object.keys(ATTRIBUTES)));
  expect(demoText).toContain("FILE_SCHEMA(('IFC4'));");
});

test("ids are 22 digits of which the first is 0 to 3, differ, and stay from file to file", () => {
  const ids = (text: string) => [...text.matchAll(/=IFC[A-Z]+\('([0-9A-Za-z_$]{22})',\$/g)].map(([, id]) => id!);
  const own = ids(demoText);
  expect(own.every((id) => /^[0-3]/.test(id))).toBe(true);
  expect(new Set(own).size).toBe(own.length);
  expect(ids(runsIfc(demo, "Ferry terminal", "2027-01-01T00:00:00"))).toEqual(own);
  // A run keeps its ids when others come or go; another job's run has others.
  const fewer = ids(runsIfc(demo.slice(3), "Ferry terminal", MADE));
  expect(own).toEqual(expect.arrayContaining(fewer));
  expect(ids(runsIfc(demo, "Other", MADE)).filter((id) => own.includes(id))).toEqual([]);
  const many = Array.from({ length: 20_000 }, (_, index) => globalId(`job/R-${index}/1`));
  expect(new Set(many).size).toBe(20_000);
});

test("names with quotes, backslashes and other scripts arrive, and two runs of one name are two", () => {
  const name = `O'Neil \\ ½" Ω`;
  const twice = runsOf([
    ["Run", "Raceway", "Size", "Route"],
    [name, "EMT", "1/2", "up 10"],
    [name, "EMT", "1/2", "up 11"],
  ]);
  const segments = all("IFCCABLECARRIERSEGMENT", readStepText(runsIfc(twice, "J", MADE)));
  expect(segments.map(({ values }) => values[2])).toEqual([name, name]);
  expect(segments[0]!.values[0]).not.toBe(segments[1]!.values[0]);
});
