/** Routes that read well but cannot be walked; each is told with its step, what was read and what was expected. */
import { InputError } from "../../src/units/errors";
import { resolve } from "../support/pulls";

test.each([
  ["up 40, down 10", `step 2: got "down 10"; expected a turn below 180°; this runs straight back over the leg before.`],
  [
    "to 0 0 9, to 0 0 2",
    `step 2: got "to 0 0 2"; expected a turn below 180°; this runs straight back over the leg before.`,
  ],
  ["to 0 0 0", `step 1: got "to 0 0 0"; expected a point away from where the run already is.`],
  ["up 9, to 0 0 9", `step 2: got "to 0 0 9"; expected a point away from where the run already is.`],
  [
    "to 100 0 0, to 200 0.01 0",
    `step 2: got "to 200 0.01 0"; expected a turn of at least 0.05°, not 0.00573°; leave out a point, or move it.`,
  ],
  [
    "east 40, bend 0.01 up, ahead 9",
    `step 2: got "bend 0.01 up"; expected a turn of at least 0.05°, not 0.01°; leave out a point, or move it.`,
  ],
  ["ahead 40", `step 1: got "ahead 40"; expected a leg with a direction first, as in up 24.`],
  ["bend 30 up, ahead 9", `step 1: got "bend 30 up"; expected a leg first after the start, as in up 24.`],
  ["offset 6 up at 30, east 9", `step 1: got "offset 6 up at 30"; expected a leg first after the start, as in up 24.`],
  ["saddle 3 up at 45, east 90", `step 1: got "saddle 3 up at 45"; expected a leg first after the start, as in up 24.`],
  ["box, up 40", `step 1: got "box"; expected a leg first after the start, as in up 24.`],
  ["sweep 24", `the route ends with step 1; expected a leg first after the start, as in up 24.`],
  ["up 40, box, box, up 40", `step 3: got "box"; expected a leg first after the box, as in up 24.`],
  [
    "up 40, box, bend 30 east, ahead 40",
    `step 3: got "bend 30 east"; expected a leg first after the box, as in up 24.`,
  ],
  [
    "up 40, box, offset 6 east at 30, up 40",
    `step 3: got "offset 6 east at 30"; expected a leg first after the box, as in up 24.`,
  ],
  ["up 40, bend 30 east", `the route ends with step 2; expected a leg first after step 2, as in ahead 24.`],
  ["up 40, offset 6 east at 30", `the route ends with step 2; expected a leg first after step 2, as in ahead 24.`],
  ["up 40, saddle 6 east at 30, box", `step 3: got "box"; expected a leg first after step 2, as in ahead 24.`],
  [
    "up 40, bend 30 east, bend 20 north, ahead 9",
    `step 3: got "bend 20 north"; expected a leg first after step 2, as in ahead 24.`,
  ],
  [
    "up 40, offset 6 east at 30, saddle 3 west at 45, up 40",
    `step 3: got "saddle 3 west at 45"; expected a leg first after step 2, as in ahead 24.`,
  ],
  [
    "up 40, offset 6 east at 30, north 40",
    `step 3: got "north 40"; expected the run to go on up here, as in ahead 24.`,
  ],
  ["up 40, saddle 6 east at 30, down 40", `step 3: got "down 40"; expected the run to go on up here, as in ahead 24.`],
  [
    "east 40, bend 30 up, up 24",
    `step 3: got "up 24"; expected the run to go on along 0.866 0 0.5 (east north up) here, as in ahead 24.`,
  ],
  [
    "up 40, bend 30 up, ahead 9",
    `step 2: got "bend 30 up"; expected a direction to the side of the run, which goes up.`,
  ],
  [
    "up 40, bend 30 down, ahead 9",
    `step 2: got "bend 30 down"; expected a direction to the side of the run, which goes up.`,
  ],
  [
    "east 40, offset 6 west at 30, east 9",
    `step 2: got "offset 6 west at 30"; expected a direction to the side of the run, which goes east.`,
  ],
  [
    "east 40, offset 6 up 3 down at 30, east 9",
    `step 2: got "offset 6 up 3 down at 30"; expected two directions square to each other and to the run, which goes east.`,
  ],
  [
    "east 40, offset 6 up 3 east at 30, east 9",
    `step 2: got "offset 6 up 3 east at 30"; expected two directions square to each other and to the run, which goes east.`,
  ],
  [
    "east 40, saddle 6 east at 30, east 9",
    `step 2: got "saddle 6 east at 30"; expected a direction to the side of the run, which goes east.`,
  ],
  ["up 40, sweep 24", `the route ends with step 2; expected a change of direction first, for the sweep of step 2.`],
  [
    "up 40, sweep 24, box, east 40",
    `step 3: got "box"; expected a change of direction first, for the sweep of step 2.`,
  ],
  [
    "up 40, box, sweep 24",
    `the route ends with step 3; expected a change of direction first, for the sweep of step 3.`,
  ],
  [
    "up 40, sweep 24, sweep 20, east 40",
    `step 3: got "sweep 20"; expected a change of direction first, for the sweep of step 2.`,
  ],
  [
    "up 40, sweep 24, offset 6 east at 30, up 40",
    `step 3: got "offset 6 east at 30"; expected a change of direction first, for the sweep of step 2.`,
  ],
  [
    "up 40, sweep 24, saddle 6 east at 30, up 40",
    `step 3: got "saddle 6 east at 30"; expected a change of direction first, for the sweep of step 2.`,
  ],
  ["up 40, sweep 3, east 40", `step 2: sweep radius must be at least the shoe's 4 in.; got 3 in.`],
])("%p is refused in words", (route, message) => {
  expect(() => resolve(route)).toThrow(new InputError(message));
});

// By hand: three bends at 60° of R 4 stand 3 + 4(2/√3 − 1) = 3.618802 high and take √3 times that, 6.267949.
// Nine shots of 10° at radius 24 take 24(1 − tan 5°) = 21.900283.
test.each([
  [
    "east 6, saddle 3 up at 60, east 50",
    "step 1: the leg is 6 in. long, but the three-bend saddle of step 2 takes 6.2679 in. of it: 0.2679 in. short.",
  ],
  [
    "east 50, saddle 3 up at 60, east 6",
    "step 3: the leg is 6 in. long, but the three-bend saddle of step 2 takes 6.2679 in. of it: 0.2679 in. short.",
  ],
  [
    "east 50, saddle 3 up at 60, east 20, sweep 24, north 50",
    "step 3: the leg is 20 in. long, but the three-bend saddle of step 2 takes 6.2679 in. and the sweep of step 4 takes 21.9003 in. of it: 8.1682 in. short.",
  ],
])("%p is refused with the lengths that do not go together", (route, message) => {
  expect(() => resolve(route)).toThrow(new InputError(message));
});

test.each([
  [
    "stub 10 up",
    undefined,
    `step 1: got "stub 10 up"; expected only plain legs square to it before and after, since it is measured to a 90.`,
  ],
  [
    "stub 10 up, bend 30 east, ahead 9",
    0.7,
    `step 1: got "stub 10 up"; expected only plain legs square to it before and after, since it is measured to a 90.`,
  ],
  [
    "stub 10 up, up 9, east 9",
    0.7,
    `step 1: got "stub 10 up"; expected only plain legs square to it before and after, since it is measured to a 90.`,
  ],
  ["stub 10 up, east 20", undefined, "step 1: a length to the back of a bend needs the conduit's outside diameter."],
  ["up 20, east 0.6 back to back, up 20", 0.7, `step 2: got "east 0.6 back to back"; expected a length above 0.7 in.`],
])("%p with an outside diameter of %p is refused in words", (route, outsideDiameter, message) => {
  expect(() => resolve(route, 4, outsideDiameter)).toThrow(new InputError(message));
});
