/** Notes beside the schedule's rows, worked out by hand for 1/2 EMT on R 4. [in], [°] */
import { buildRun } from "../../../src/shop/run/buildRun";
import { scheduleRun } from "../../../src/shop/schedule/schedule";
import { turnWords } from "../../../src/shop/schedule/turnWords";
import type { Shoe } from "../../../src/shop/shoe/shoe";
import { HALF_EMT, runOf } from "../../support/demoShoe";

const notesOf = (route: string, shoe: Partial<Shoe> = {}): string[] =>
  scheduleRun(buildRun(runOf(route), { ...HALF_EMT, ...shoe })).map(({ Note }) => String(Note));

test("a bend of a group says which one it is; a plain bend says nothing", () => {
  expect(notesOf("up 30, east 40")).toEqual([""]);
  expect(notesOf("up 60, sweep 24 in 9, east 30").map((note) => note.split("; ")[0])).toEqual(
    Array.from({ length: 9 }, (_, shot) => `shot ${shot + 1} of 9`),
  );
  expect(notesOf("east 30, offset 6 up at 30, ahead 30")[0]).toBe("bend 1 of 2");
});

test("the handbook's spacing is too long or too short by what it differs from the exact one", () => {
  // Offset of 6 at 30°, printed 2: 12; exact 12 − (8·tan 15° − 4π/6) = 11.9508.
  expect(notesOf("east 30, offset 6 up at 30, ahead 30")[1]).toBe(
    "bend 2 of 2; spacing 11.9508 in.; handbook (2 × rise) 12 in., 0.0492 in. too long",
  );
  // At 22.5° the printed multiplier is 2.6, the cosecant 2.6131: 15.6 for 6, exact 15.6788 − (8·tan 11.25° − π/2).
  const exact = 6 / Math.sin(Math.PI / 8) - (8 * Math.tan(Math.PI / 16) - Math.PI / 2);
  expect(notesOf("east 30, offset 6 up at 22.5, ahead 30")[1]).toBe(
    `bend 2 of 2; spacing ${exact.toFixed(4)} in.; handbook (2.6 × rise) 15.6 in., ${(exact - 15.6).toFixed(4)} in. too short`,
  );
  // A small angle with nothing in print: the cosecant misses by the gain alone, 8·tan 1.5° − 4·3° = 4.8e-5 in.
  expect(notesOf("east 30, offset 1 up at 3, ahead 30")[1]).toMatch(/^bend 2 of 2; .*, no difference$/);
});

test("an end too short to hold is told with its side, and what to do", () => {
  expect(notesOf("up 5, east 5")).toEqual([
    "the datum end has 1 in. to hold; the shoe needs 2 in.: bend it long and cut",
  ]);
  expect(notesOf("up 6, east 6")).toEqual([""]);
  // The star hooks the far end, which has 5 − 4 = 1 in.
  expect(notesOf("up 30, east 30, down 5")[1]).toBe(
    "star 30.706 in. from the back of the bend before; the far end has 1 in. to hold; the shoe needs 2 in.: bend it long and cut",
  );
});

test("couplings are told once for a piece, beside its last bend", () => {
  const notes = notesOf("up 40, east 60, north 200, up 80, west 20");
  expect(notes.filter((note) => note.includes("coupling"))).toHaveLength(
    new Set(
      scheduleRun(buildRun(runOf("up 40, east 60, north 200, up 80, west 20"), HALF_EMT)).map(({ Piece }) => Piece),
    ).size,
  );
  expect(notesOf("east 300")).toEqual([
    "coupling on the far end",
    "couplings on both ends",
    "coupling on the datum end",
  ]);
});

test("turns in words", () => {
  expect(turnWords(0, "datum", undefined)).toBe("first bend");
  expect(turnWords(0, "far", undefined)).toBe("first bend; put the far end on the hook's side");
  expect(turnWords(0, "datum", "datum")).toBe("do not turn; slide to the mark");
  expect(turnWords(-0.001, "datum", "datum")).toBe("do not turn; slide to the mark");
  expect(turnWords(90, "far", "far")).toBe("turn 90° counterclockwise, seen from the datum end");
  expect(turnWords(-90, "far", "datum")).toBe(
    "swap the conduit end for end, last bend pointing as before; then turn 90° clockwise, seen from the datum end",
  );
  expect(turnWords(180, "datum", "far")).toBe(
    "swap the conduit end for end, last bend pointing as before; then turn 180°",
  );
  expect(turnWords(0, "datum", "far")).toBe("swap the conduit end for end, last bend pointing as before");
});
