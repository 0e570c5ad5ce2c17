import fc from "fast-check";
import { drawStick } from "../../../src/drawing/bench/drawStick";
import { stickOf, type StickPicture, type StickMark } from "../../../src/drawing/bench/stick";
import { inches, labelFaults, middleOf, readBack } from "../measure";

const STICK: StickPicture = {
  name: "B-2 piece 1",
  cutLength: 100,
  marks: [
    { bend: 1, distance: 17.625, lineUp: "arrow", hook: "datum" },
    { bend: 2, distance: 50, lineUp: "notch", hook: "datum" },
    { bend: 3, distance: 88.5, lineUp: "star", hook: "far" },
  ],
  coupledAfter: true,
};

test("marks stand on the stick to scale, from the datum end", () => {
  const drawn = readBack(drawStick(STICK, { width: 450, show: inches }));
  const body = drawn.lines("conduit")[0]!.map(([x]) => x);
  const [left, right] = [Math.min(...body), Math.max(...body)];
  const ticks = drawn.lines("mark").filter((line) => line.length === 2 && line[0]![0] === line[1]![0]);
  expect(ticks.map((line) => ((middleOf(line)[0] - left) / (right - left)) * 100)).toEqual([
    expect.closeTo(17.625, 2),
    expect.closeTo(50, 2),
    expect.closeTo(88.5, 2),
  ]);
});

test("each distance has its own line from the datum end to its mark", () => {
  const drawn = readBack(drawStick(STICK, { width: 450, show: inches }));
  const rows = drawn.lines("dimension").filter((line) => line[0]![0] === drawn.lines("conduit")[0]![0]![0]);
  expect(rows.slice(0, 3).map((line) => line[1]![0])).toEqual(
    drawn
      .lines("mark")
      .filter((line) => line.length === 2)
      .map((line) => line[0]![0]),
  );
});

test("words say the distance, the line-up and the hook; the description says it all again", () => {
  const scene = drawStick(STICK, { show: inches });
  const texts = readBack(scene).texts.map(({ text }) => text);
  expect(texts).toEqual(
    expect.arrayContaining([
      "datum end",
      "far end",
      "1: 17.625 in., arrow, hook toward datum end",
      "2: 50 in., notch, hook toward datum end",
      "3: 88.5 in., star, hook toward far end",
      "cut 100 in.",
    ]),
  );
  expect(scene.title).toBe("B-2 piece 1: where to mark the stick");
  expect(scene.description).toBe(
    "Cut length 100 in. Bend 1: 17.625 in., arrow, hook toward datum end. Bend 2: 50 in., notch, hook toward datum end. " +
      "Bend 3: 88.5 in., star, hook toward far end. A coupling goes on the far end.",
  );
});

test("a coupling is drawn over the end it goes on, and only there", () => {
  const sleeves = (stick: StickPicture) =>
    readBack(drawStick(stick, { show: inches }))
      .lines("conduit")
      .slice(1);
  expect(sleeves({ ...STICK, coupledAfter: false })).toHaveLength(0);
  const [after] = sleeves(STICK);
  expect(Math.min(...after!.map(([x]) => x))).toBeGreaterThan(280);
  const [before] = sleeves({ ...STICK, coupledAfter: false, coupledBefore: true });
  expect(Math.max(...before!.map(([x]) => x))).toBeLessThan(40);
});

test("a mark off the stick is drawn off the stick", () => {
  const mark: StickMark = { bend: 1, distance: -2, lineUp: "arrow", hook: "datum" };
  const drawn = readBack(drawStick({ name: "x", cutLength: 40, marks: [mark] }, { show: inches }));
  expect(middleOf(drawn.lines("mark")[0]!)[0]).toBeLessThan(drawn.lines("conduit")[0]![0]![0]);
});

test("labels lie clear of each other, however close the marks", () => {
  const mark = fc.record({
    bend: fc.integer({ min: 1, max: 30 }),
    distance: fc.double({ min: -1, max: 121, noNaN: true }),
    lineUp: fc.constantFrom("arrow" as const, "star" as const, "notch" as const),
    hook: fc.constantFrom("datum" as const, "far" as const),
  });
  fc.assert(
    fc.property(fc.array(mark, { maxLength: 20 }), fc.constantFrom(320, 450), (marks, width) => {
      const scene = drawStick({ name: "x", cutLength: 120, marks }, { width, show: inches });
      expect(labelFaults(scene)).toEqual([]);
    }),
  );
});

test("words too long for a narrow page go on in another line", () => {
  const mark: StickMark = { bend: 10, distance: 10.0625, lineUp: "arrow", hook: "datum" };
  const scene = drawStick(
    { name: "x", cutLength: 120, marks: [mark] },
    { show: (value) => `${value.toFixed(12)} in.` },
  );
  expect(labelFaults(scene)).toEqual([]);
  const words = readBack(scene)
    .texts.map(({ text }) => text)
    .join(" ");
  expect(words).toContain("10: 10.062500000000 in., arrow, hook toward datum end");
});

test("a stick is read from the schedule's rows of one piece", () => {
  const row = {
    Run: "B-2",
    Piece: 1,
    "Cut length": 40,
    Bend: 1,
    Mark: 12.5,
    "Line up": "arrow",
    Hook: "far",
    Angle: 30,
  };
  expect(stickOf([row])).toEqual({
    name: "B-2 piece 1",
    cutLength: 40,
    marks: [{ bend: 1, distance: 12.5, lineUp: "arrow", hook: "far" }],
  });
  expect(stickOf([{ ...row, Bend: "", Mark: "", "Line up": "", Hook: "" }]).marks).toEqual([]);
});
