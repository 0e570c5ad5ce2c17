/** A ticket's text whole, in each unit, for a ticket with plain numbers. Written by hand. Lengths [in], angles [°]. */
import { ticketOf, ticketsOf, type Ticket } from "../../../src/shop/ticket/ticket";
import { TICKET_CAUTIONS } from "../../../src/shop/ticket/ticketCautions";
import { ticketText } from "../../../src/shop/ticket/ticketText";
import { writerFor } from "../../../src/shop/ticket/ticketWords";
import { buildRun } from "../../../src/shop/run/buildRun";
import { HALF_EMT, runOf } from "../../support/demoShoe";

const TICKET: Ticket = {
  run: runOf("", { quantity: 4 }),
  shoe: { ...HALF_EMT, radius: 4.23456, springback: 3.5, dialStart: -1 },
  ...{ name: "A-1/2", code: "GMP3-TN8Y", sawnEnds: "ream them" },
  piece: 2,
  pieces: 3,
  cutLength: 40.4971,
  bends: [
    {
      ...{ number: 1, kind: "offset, 1 of 2", mark: 5.0012, lineUp: "arrow", hook: "far" },
      ...{ angle: 22.5, dial: 25.004, roll: 0, notes: ["mind the step", "and the head"] },
    },
    {
      ...{ number: 2, kind: "offset, 2 of 2", mark: 14.75, lineUp: "star", hook: "datum" },
      ...{ angle: 104, dial: "past 105°", roll: -30.125, notes: [] },
    },
  ],
  coupledBefore: true,
  coupledAfter: false,
  join: { piece: 1, roll: -35.504 },
  checks: [
    { what: "Far end", is: [9.126, " ahead", ", ", 6, " up"] },
    { what: "Laid on a level floor", is: ["every bend lies flat"] },
  ],
  ends: { datum: "couples to piece 1", far: "" },
  path: { points: [], radii: [] },
};

test("feet and inches: every line of a bent piece that is coupled on", () => {
  expect(ticketText(TICKET).split("\n")).toEqual([
    "RUN A-1",
    "Piece 2 of 3; make 4",
    "Piece code: A-1/2, shape GMP3-TN8Y",
    "Job: Ferry terminal",
    "Area: Pump room",
    "Conduit: EMT 1/2",
    "Shoe: radius 4.2346 in., deduct 5 in., outside diameter 0.706 in., springback 3.5° at 90°, dial starts at -1° (NOT MEASURED: worked examples)",
    `Cut length: 3' 4-1/2" (40.497 in.)`,
    "Datum end: couples to piece 1",
    "Sawn ends: ream them",
    "",
    "Write D on the datum end. Put every mark on the straight stick first; measure each from D.",
    "",
    'Step 1, bend 1 (offset, 1 of 2): mark at 5" (5.001 in.)',
    "  Turn: first bend; put the far end on the hook's side",
    "  Line up: arrow",
    "  Hook: toward the far end",
    "  Dial: 25°, for a finished 22.5°",
    "  Note: mind the step",
    "  Note: and the head",
    `Step 2, bend 2 (offset, 2 of 2): mark at 1' 2-3/4" (14.75 in.)`,
    "  Turn: swap the conduit end for end, last bend pointing as before; then turn 30.13° clockwise, seen from the datum end",
    "  Line up: star",
    "  Hook: toward the datum end",
    "  Dial: past 105°, for a finished 104°",
    "",
    "Coupled on: bend 1 points 35.5° counterclockwise from the last bend of piece 1, seen from the datum end",
    "",
    "Check the finished piece:",
    `- Far end: 9-1/8" ahead, 6" up`,
    "- Laid on a level floor: every bend lies flat",
    "",
    "Caution:",
    ...TICKET_CAUTIONS.map((caution) => `- ${caution}`),
    "",
  ]);
});

test("a straight piece has nothing to bend, to join and to check; what is not known has no line", () => {
  const { join, ...others } = TICKET;
  expect(join).toBeDefined();
  const run = runOf("", { job: "", area: "Hall" });
  const straight: Ticket = { ...others, run, bends: [], checks: [], ends: { datum: "", far: "Fan" } };
  expect(ticketText(straight).split("\n").slice(2)).toEqual([
    "Piece code: A-1/2, shape GMP3-TN8Y",
    "Area: Hall",
    "Conduit: EMT 1/2",
    expect.stringMatching(/^Shoe: /) as string,
    `Cut length: 3' 4-1/2" (40.497 in.)`,
    "Far end: Fan",
    "Sawn ends: ream them",
    "",
    "Straight: cut it, nothing to bend.",
    "",
    "Caution:",
    ...TICKET_CAUTIONS.map((caution) => `- ${caution}`),
    "",
  ]);
});

test("millimeters: whole ones, told once; the shoe with two decimals", () => {
  // By hand: 40.4971 in. are 1028.626 mm, 5.0012 in. 127.030 mm; radius 107.5578, deduct 127, OD 17.9324 mm.
  const lines = ticketText(TICKET, { style: "mm" }).split("\n");
  expect(lines).toContain("Cut length: 1029 mm");
  expect(lines).toContain("Step 1, bend 1 (offset, 1 of 2): mark at 127 mm");
  expect(lines).toContain("- Far end: 232 mm ahead, 152 mm up");
  expect(lines.find((line) => line.startsWith("Shoe:"))).toContain(
    "radius 107.56 mm, deduct 127 mm, outside diameter 17.93 mm, springback 3.5° at 90°",
  );
});

test("inches: no feet", () => {
  expect(ticketText(TICKET, { style: "inches" })).toContain('Cut length: 40-1/2" (40.497 in.)');
});

test("exact: every length and angle with its decimals, and no rounded one beside it", () => {
  const lines = ticketText(TICKET, { exact: true }).split("\n");
  for (const line of [
    "Cut length: 40.4971 in.",
    "Step 1, bend 1 (offset, 1 of 2): mark at 5.0012 in.",
    "  Dial: 25.004°, for a finished 22.5°",
    "Coupled on: bend 1 points 35.504° counterclockwise from the last bend of piece 1, seen from the datum end",
    "- Far end: 9.126 in. ahead, 6 in. up",
  ]) {
    expect(lines).toContain(line);
  }
  expect(lines.find((line) => line.startsWith("Shoe:"))).toContain("radius 4.23456 in.");
  expect(lines.find((line) => line.includes("swap"))).toContain("then turn 30.125° clockwise");
});

test("a joint in line, opposite, and either way round", () => {
  const join = (roll: number) => writerFor("feet").join({ piece: 3, roll });
  expect(join(0)).toBe("bend 1 points the same way as the last bend of piece 3");
  expect(join(180)).toBe("bend 1 points opposite to the last bend of piece 3");
  expect(join(-90)).toBe("bend 1 points 90° counterclockwise from the last bend of piece 3, seen from the datum end");
  expect(join(12.345)).toBe("bend 1 points 12.35° clockwise from the last bend of piece 3, seen from the datum end");
});

test("how a piece sits against the elbow before it, and what its ends couple to, in words", () => {
  const join = (roll: number, elbow: number) => writerFor("feet").join({ elbow, roll });
  expect(join(180, 90)).toBe("bend 1 points opposite to the 90° factory elbow before it");
  expect(join(-45, 22.5)).toBe(
    "bend 1 points 45° counterclockwise from the 22.5° factory elbow before it, seen from the datum end",
  );
  const built = buildRun(runOf("up 40, east 50, offset 6 up at 30, ahead 40, north 30"), HALF_EMT, [90]);
  const [first, second] = ticketsOf(built).map((ticket) => ticketText(ticket));
  expect(first).toContain("Piece 1 of 3; make 1\n");
  expect(first).toContain("Far end: couples to a factory elbow, 90°\n");
  expect(second).toContain("Datum end: couples to a factory elbow, 90°\nFar end: couples to a factory elbow, 90°\n");
  expect(second).toContain("Coupled on: bend 1 points opposite to the 90° factory elbow before it\n");
});

test("a single length, rounded or exact", () => {
  const [feet, mm, exact] = [writerFor("feet"), writerFor("mm"), writerFor("feet", true)];
  expect([feet.length(14.7512), feet.exact(14.75123)]).toEqual([`1' 2-3/4"`, "14.751 in."]);
  expect([mm.length(2), mm.exact(2.0101)]).toEqual(["51 mm", ""]);
  expect([exact.length(14.7512), exact.exact(14.75123)]).toEqual(["14.7512 in.", "14.751 in."]);
});

test("a run's own tickets count its pieces and carry its values", () => {
  const built = buildRun(runOf("up 60, east 100, box, south 20"), HALF_EMT);
  const [first] = built.pulls[0]!.pieces;
  expect(ticketOf(built, first!)).toMatchObject({
    ...{ piece: 1, pieces: 3, coupledBefore: false, coupledAfter: true, run: built.run, shoe: built.shoe },
  });
});
