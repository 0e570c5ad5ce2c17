import { readRoute } from "../../src/route/text/readRoute";

test("every kind of step is read", () => {
  const text = `up 4', east 12' 6"; down 30
    bend 30 up, ahead 24
    offset 6 up at 30, offset 8 up 12 east at 45, box offset 1/2 up at 7
    saddle 3 down at 45, saddle 2 up over 12 at 30
    to 100 0 -20.5
    sweep 24, sweep 18 in 7 shots
    kick 20 west, stub 10 up, north 40 to back
    box`;
  expect(readRoute(text)).toEqual([
    { kind: "leg", direction: "up", length: 48 },
    { kind: "leg", direction: "east", length: 150 },
    { kind: "leg", direction: "down", length: 30 },
    { kind: "bend", angle: 30, toward: "up" },
    { kind: "ahead", length: 24 },
    { kind: "offset", rises: [{ rise: 6, toward: "up" }], angle: 30 },
    {
      kind: "offset",
      rises: [
        { rise: 8, toward: "up" },
        { rise: 12, toward: "east" },
      ],
      angle: 45,
    },
    { kind: "box offset", rise: { rise: 0.5, toward: "up" }, angle: 7 },
    { kind: "saddle", height: 3, toward: "down", over: null, angle: 45 },
    { kind: "saddle", height: 2, toward: "up", over: 12, angle: 30 },
    { kind: "to", point: [100, 0, -20.5] },
    { kind: "sweep", radius: 24, shots: null },
    { kind: "sweep", radius: 18, shots: 7 },
    { kind: "bend", angle: 20, toward: "west" },
    { kind: "leg", direction: "up", length: 10, back: true },
    { kind: "leg", direction: "north", length: 40, back: true },
    { kind: "box" },
  ]);
});

test.each([
  [`up 3' 4-1/2"`, 40.5],
  ["up 3' 4 1/2\"", 40.5],
  ["up 3 ft 4½ in", 40.5],
  ["up 1028.7 mm", 40.5],
  ["up 1.0287 m", 40.5],
  ["  UP\t40.5 ", 40.5],
  ["Up40.5", 40.5],
])("the length in %p is 40.5 in.", (text, length) => {
  const [step] = readRoute(text);
  expect(step).toEqual({ kind: "leg", direction: "up", length: expect.closeTo(length, 9) });
});

test.each([
  ["sweep 24", 24, null],
  ["sweep 24 in", 24, null],
  ["sweep 24 in 9", 24, 9],
  ["sweep 24 in. in 9 shots", 24, 9],
  [`sweep 2'6" in 12`, 30, 12],
  ["sweep24in9", 24, 9],
])("%p tells inches from shots", (text, radius, shots) => {
  expect(readRoute(text)).toEqual([{ kind: "sweep", radius, shots }]);
});

test.each([
  "offset 6 up at 30",
  "OFFSET6UPAT30",
  'offset 6" up at 30°',
  "Offset  0.5' up  at 30 deg",
  "offset 6 up at 30 degrees",
])("%p is an offset of 6 up at 30°", (text) => {
  expect(readRoute(text)).toEqual([{ kind: "offset", rises: [{ rise: 6, toward: "up" }], angle: 30 }]);
});

// Modern Residential Wiring (2015), p. 91: about 5° for each bend of a box offset.
test("a box offset without an angle has bends of 5°", () => {
  expect(readRoute("box offset 1/2 down")).toEqual([
    { kind: "box offset", rise: { rise: 0.5, toward: "down" }, angle: 5 },
  ]);
});

test("empty steps are passed over and not counted", () => {
  expect(readRoute(",up 40,;\n\r\neast 20;;")).toHaveLength(2);
  expect(() => readRoute("up 40,,\n est 20")).toThrow(/^step 2: got "est 20"/);
});

const ANY =
  "up, down, north, south, east or west with a length, ahead, to, bend, kick, offset, saddle, sweep, elbow, stub, box, LB (or another conduit body), union, coupling, expansion or flex";
test.each([
  [null, `route must be text, as in up 4', east 12' 6"; got an empty cell.`],
  ["  \n ", `route must be text, as in up 4', east 12' 6"; got "  \n ".`],
  [48, `route must be text, as in up 4', east 12' 6"; got 48.`],
  [true, `route must be text, as in up 4', east 12' 6"; got TRUE.`],
  [",;,", `route must have at least one step; got ",;,".`],
  ["left 40", `step 1: got "left 40"; expected ${ANY}.`],
  ["up 40, 150 east", `step 2: got "150 east"; did you mean "east 150" or "bend 150 east"?`],
  ["up 40,5", `step 2: got "5"; expected ${ANY} (commas part steps: write 12.5 for twelve and a half).`],
  ["up", `step 1: got "up"; expected a direction and a length, as in up 4'.`],
  ["up 40, ahead", `step 2: got "ahead"; expected ahead and a length, as in ahead 24.`],
  ["bend up", `step 1: got "bend up"; expected an angle and a direction to turn toward, as in bend 30 up.`],
  ["bend 30", `step 1: got "bend 30"; expected an angle and a direction to turn toward, as in bend 30 up.`],
  ["kick 20 left", `step 1: got "kick 20 left"; expected an angle and a direction to turn toward, as in kick 20 up.`],
  [
    "offset 6 up",
    `step 1: got "offset 6 up"; expected a rise, its direction and an angle, as in offset 6 up at 30 or offset 8 up 12 east at 45.`,
  ],
  [
    "offset 6 at 30",
    `step 1: got "offset 6 at 30"; expected a rise, its direction and an angle, as in offset 6 up at 30 or offset 8 up 12 east at 45.`,
  ],
  [
    "box offset up",
    `step 1: got "box offset up"; expected a rise, its direction and an angle, as in box offset 1/2 up at 5.`,
  ],
  [
    "saddle 3 at 45",
    `step 1: got "saddle 3 at 45"; expected a height, its direction and an angle, as in saddle 3 up at 45 or saddle 3 up over 12 at 30.`,
  ],
  [
    "saddle 3 up over at 30",
    `step 1: got "saddle 3 up over at 30"; expected a height, its direction and an angle, as in saddle 3 up at 45 or saddle 3 up over 12 at 30.`,
  ],
  [
    "to 100, 0, -20",
    `step 1: got "to 100"; expected inches east, north and up of the datum, parted by spaces, as in to 100 0 -20.`,
  ],
  [
    "to 100 0 -20 5",
    `step 1: got "to 100 0 -20 5"; expected inches east, north and up of the datum, parted by spaces, as in to 100 0 -20.`,
  ],
  ["sweep", `step 1: got "sweep"; expected a radius, as in sweep 24 or sweep 24 in 9.`],
  ["stub 10", `step 1: got "stub 10"; expected a length to the back of the bend and up or down, as in stub 10 up.`],
  [
    "stub 10 east",
    `step 1: got "stub 10 east"; expected a length to the back of the bend and up or down, as in stub 10 up.`,
  ],
  ["up 40, boxes", `step 2: got "boxes"; did you mean "box"?`],
])("%p is refused with its step, what was read and what was expected", (text, message) => {
  expect(() => readRoute(text)).toThrow(new Error(message));
});

test.each([
  ["up -4", /^step 1: up must be .*above 0.*got/],
  ["up 40, east 0", /^step 2: east must be .*above 0.*got/],
  ["up forty", /^step 1: up .*forty/],
  ["up 40 apples", /^step 1: up .*40 apples/],
  ["up 4'6'', east 3\"4", /^step 2: east .*3"4/],
  ["up 120001", /^step 1: up .*120000/],
  ["bend 0 up", /^step 1: angle must be above 0.*got 0/],
  ["bend 180 up", /^step 1: angle must be .*below 180.*got 180/],
  ["bend x up", /^step 1: angle .*x/],
  ["kick 91 up", /^step 1: kick angle .*90.*got 91/],
  ["offset 0 up at 30", /^step 1: rise must be .*above 0.*got/],
  ["offset 6 up at 91", /^step 1: angle .*90.*got 91/],
  ["offset 6 up at 0", /^step 1: angle must be above 0.*got 0/],
  ["offset 6 up 0 east at 30", /^step 1: rise must be .*above 0.*got/],
  ["saddle 0 up at 45", /^step 1: saddle height must be .*above 0.*got/],
  ["saddle 3 up over 0 at 45", /^step 1: obstacle width must be .*above 0.*got/],
  ["saddle 3 up at 95", /^step 1: angle .*90.*got 95/],
  ["to 1 2 x", /^step 1: up .*x/],
  ["to y 2 3", /^step 1: east .*y/],
  ["to 1 200000 3", /^step 1: north .*120000/],
  ["sweep 0", /^step 1: sweep radius must be .*above 0.*got/],
  ["sweep 24 in 1", /^step 1: shots .*2.*got 1/],
  ["sweep 24 in 91", /^step 1: shots .*90.*got 91/],
])("%p is refused by the name and limit of its value", (text, message) => {
  expect(() => readRoute(text)).toThrow(message);
});

test("a long step is refused, not searched", () => {
  expect(() => readRoute(`up 40, offset ${"up ".repeat(1000)}`)).toThrow(
    /^step 2: got "offset up up .*…"; expected at most 120 characters in a step\.$/,
  );
});

test("a route of 10,000 characters is refused with its length", () => {
  const text = "up 40, ".repeat(1500).slice(0, 10000);
  expect(() => readRoute(text)).toThrow("route must be at most 4000 characters long; got 10000. Part it at a box.");
});

test("a length too small to lay out is refused, one just above it is read", () => {
  expect(() => readRoute("up 40, east 0.001")).toThrow(
    "step 2: east must be above 0.001 in. and at most 120000 in.; got 0.001 in.",
  );
  expect(readRoute("east 0.0011")).toHaveLength(1);
});
