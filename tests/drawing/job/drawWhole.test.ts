/** The picture of a whole job: where its runs lie, which are in it, and that they can be told apart. */
import { drawWhole, MOST_KINDS, type StandingRun } from "../../../src/drawing/job/drawWhole";
import { standingRuns } from "../../../src/drawing/job/standingRuns";
import { HUE_LOOKS } from "../../../src/drawing/paper/drawingCss";
import type { LineItem, Scene } from "../../../src/drawing/paper/scene";
import { toSvg } from "../../../src/drawing/paper/toSvg";
import { readMade } from "../../../src/made/records/madeTable";
import { buildJob } from "../../../src/shop/job/job";
import { runsRange } from "../../takeoff/tables";

const job = buildJob({
  runs: runsRange(
    { Run: "A", Area: "Hall", Route: "east 100, north 60", Start: "0 0 0" },
    { Run: "B", Area: "Yard", Route: "up 40", Start: "50 30 10", Size: "1", Quantity: 2 },
    { Run: "C", Area: "Yard", Route: "east 40" },
    { Run: "D", Area: "Hall", Route: "what", Start: "0 0 0" },
  ),
});
const { runs, kinds } = standingRuns(job, "Size", "", undefined);
const draw = (more: Partial<Parameters<typeof drawWhole>[1]> = {}): Scene =>
  drawWhole(runs, { title: "Job", view: "plan", width: 400, show: (inches) => `${inches} in.`, kinds, ...more });
const linesOf = (scene: Scene, row: number): LineItem[] =>
  scene.items.filter((item): item is LineItem => item.kind === "line" && item.row === row);
const across = ([line]: LineItem[], axis: 0 | 1): number => {
  const values = line!.points.map((point) => point[axis]);
  return Math.max(...values) - Math.min(...values);
};

test("the runs that say where they begin are in it, told apart by size; those that do not are named", () => {
  expect(runs.map(({ name, row, kind }) => [name, row, kind])).toEqual([
    ["A", 1, "1/2"],
    ["B", 2, "1"],
  ]);
  expect(standingRuns(job, "Size", "", undefined)).toMatchObject({ areas: ["Hall", "Yard"], nowhere: ["C"] });
  expect(standingRuns(job, "Size", "Yard", undefined)).toMatchObject({ runs: [{ name: "B" }], nowhere: ["C"] });
});

test("by state: nothing, some, all of a run's pieces made", () => {
  const kindsWith = (...records: [string, number][]) => {
    const made = readMade([["Date", "Piece", "Good"], ...records.map(([piece, good]) => ["2026-05-04", piece, good])]);
    return standingRuns(job, "State", "", made).runs.map(({ kind }) => kind);
  };
  expect(kindsWith()).toEqual(["not begun", "not begun"]);
  expect(kindsWith(["A/1", 1], ["B/1", 1])).toEqual(["begun", "begun"]);
  expect(kindsWith(["A/1", 1], ["A/2", 1], ["B/1", 2])).toEqual(["made", "made"]);
});

test("plan and sides are to scale: 100 in. east and 60 north from above, 40 up from the side", () => {
  const plan = draw();
  expect(across(linesOf(plan, 1), 0) / across(linesOf(plan, 1), 1)).toBeCloseTo(100 / 60, 6);
  expect(across(linesOf(plan, 2), 1)).toBeCloseTo(0, 6);
  const side = draw({ view: "elevation" });
  expect(across(linesOf(side, 2), 1) / across(linesOf(side, 1), 0)).toBeCloseTo(40 / 100, 6);
  const west = draw({ view: { azimuth: 90, elevation: 0 } });
  expect(across(linesOf(west, 1), 0) / across(linesOf(west, 2), 1)).toBeCloseTo(60 / 40, 6);
});

test("the chosen run lies on top and is pointed out; each line leads to its row", () => {
  const rowsOf = (scene: Scene) => scene.items.flatMap((item) => (item.kind === "line" && item.row) || []);
  expect(rowsOf(draw({ chosen: 1 })).at(-1)).toBe(1);
  expect(rowsOf(draw({ chosen: 2 })).at(-1)).toBe(2);
  const highlights = (scene: Scene) => scene.items.filter(({ kind, ...item }) => kind === "line" && "style" in item && item.style === "highlight"); // prettier-ignore
  expect([highlights(draw()).length, highlights(draw({ chosen: 1 })).length]).toEqual([0, 1]);
  expect(toSvg(draw())).toContain('<polyline class="rl-conduit-thin rl-hue-2" data-row="2"');
});

test("places are numbered, kinds stand in a key, and all of it stands in words", () => {
  const scene = draw({ places: [[50, 0, 0]] });
  const texts = scene.items.flatMap((item) => (item.kind === "text" ? item.text : []));
  expect(texts).toEqual(expect.arrayContaining(["A", "B", "1/2", "1"]));
  expect(scene.description).toBe("2 runs, 100 in. east to west, 60 in. north to south, 50 in. high. 1/2: A. 1: B.");
});

test("nothing to draw says so", () => {
  expect(drawWhole([], { title: "Job", view: "plan", show: String, kinds: [] }).description).toMatch(/^No run says/);
});

test("sizes for which there are too few looks go together", () => {
  const sizes = ["1/2", "3/4", "1", "1-1/4", "1-1/2", "2", "2-1/2", "3"];
  const many = buildJob({ runs: runsRange(...sizes.map((Size) => ({ Run: Size, Route: "east 100", Start: "0 0 0", Size }))) }); // prettier-ignore
  const found = standingRuns(many, "Size", "", undefined);
  expect(found.kinds).toEqual([...sizes.slice(0, MOST_KINDS - 1), "other sizes"]);
  expect(found.runs.map(({ kind }: StandingRun) => kind).slice(-2)).toEqual(["other sizes", "other sizes"]);
});

test("each look stands out from a white page and from a dark one by 3 to 1 (WCAG 2.2, 1.4.11), none twice", () => {
  const luminance = (color: string): number => {
    const [r, g, b] = [1, 3, 5].map((at) => {
      const part = parseInt(color.slice(at, at + 2), 16) / 255;
      return part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4;
    }) as [number, number, number];
    return 0.2126 * r + 0.7152 * g + 0.0722 * b;
  };
  const contrast = (a: string, b: string) => {
    const [low, high] = [luminance(a), luminance(b)].sort((x, y) => x - y) as [number, number];
    return (high + 0.05) / (low + 0.05);
  };
  expect(contrast("#000000", "#ffffff")).toBeCloseTo(21, 9);
  for (const { color } of HUE_LOOKS) {
    for (const page of ["#ffffff", "#292929"]) {
      expect({ color, page, enough: contrast(color, page) >= 3 }).toEqual({ color, page, enough: true });
    }
  }
  expect(new Set(HUE_LOOKS.map(({ dashes }) => dashes.join())).size).toBe(HUE_LOOKS.length);
});
