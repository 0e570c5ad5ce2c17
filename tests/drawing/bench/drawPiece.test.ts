/** What a shop ticket asks of the drawings of a stick and of a run. */
import fc from "fast-check";
import { drawRun } from "../../../src/drawing/run/drawRun";
import { drawStick } from "../../../src/drawing/bench/drawStick";
import { partsToPath } from "../../../src/geometry/path";
import { inches, labelFaults, readBack } from "../measure";

const textsOf = (scene: ReturnType<typeof drawRun>): string[] => readBack(scene).texts.map(({ text }) => text);

describe("distances under their marks", () => {
  const stick = (distances: readonly number[]) =>
    drawStick(
      {
        name: "x",
        cutLength: 100,
        marks: distances.map((distance, index) => ({ bend: index + 1, distance, lineUp: "arrow", hook: "datum" })),
      },
      { width: 450, show: inches, distances: "under" },
    );

  test("stand centered under the mark where there is room", () => {
    const drawn = readBack(stick([30, 70]));
    const ticks = drawn.lines("mark").filter((line) => line.length === 2 && line[0]![0] === line[1]![0]);
    const under = drawn.texts.filter(({ text }) => text === "30 in." || text === "70 in.");
    expect(under.map(({ at }) => at[0])).toEqual(ticks.map((line) => expect.closeTo(line[0]![0], 2)));
    expect(new Set(under.map(({ at }) => at[1])).size).toBe(1);
  });

  test("keep clear of each other and of the page's edges, however close the marks", () => {
    fc.assert(
      fc.property(fc.uniqueArray(fc.integer({ min: 0, max: 100 }), { maxLength: 12 }), (distances) => {
        const scene = stick(distances);
        expect(labelFaults(scene)).toEqual([]);
        for (const distance of distances) expect(textsOf(scene)).toContain(`${distance} in.`);
      }),
    );
  });
});

describe("a single piece", () => {
  const path = partsToPath(
    [30, 20, 15.3],
    [
      { angle: 90, radius: 4, rotation: 0 },
      { angle: 45.1, radius: 4, rotation: 90 },
    ],
  );
  const draw = (more: Partial<Parameters<typeof drawRun>[1]> = {}) =>
    drawRun(
      { name: "x", outsideDiameter: 0.7, pulls: [{ path, start: "coupling", end: "coupling" }] },
      { view: { azimuth: 45, elevation: 35 }, show: inches, ...more },
    );

  test("has its own heading and names for its directions, inside the page", () => {
    const scene = draw({ heading: "From behind", axes: ["left", "ahead", "up"] });
    expect(textsOf(scene)).toEqual(expect.arrayContaining(["From behind", "left", "ahead", "up"]));
    expect(scene.title).toBe("x: From behind");
    expect(labelFaults(scene)).toEqual([]);
  });

  test("can do without directions and scale", () => {
    expect(textsOf(draw())).toContain("Up");
    expect(textsOf(draw({ axes: null })).filter((text) => /Up|arms/.test(text))).toEqual([]);
  });

  test("a coupling on the far end is drawn whatever the last digits of its length", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 20, max: 90, noNaN: true }),
        fc.double({ min: 20, max: 90, noNaN: true }),
        (a, b) => {
          const bent = partsToPath([a, b], [{ angle: 90, radius: 4, rotation: 0 }]);
          const run = { name: "x", outsideDiameter: 0.7, pulls: [{ path: bent, end: "coupling" as const }] };
          expect(() => drawRun(run, { view: "plan", show: inches })).not.toThrow();
        },
      ),
    );
  });
});
