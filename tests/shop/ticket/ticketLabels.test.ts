/** The words on a ticket, whole: a translator and whoever reads a ticket rely on them. */
import { ticketsOf } from "../../../src/shop/ticket/ticket";
import { TICKET_LABELS, TICKET_SHEET_LABELS } from "../../../src/shop/ticket/ticketLabels";
import { ticketTitle } from "../../../src/shop/ticket/ticketTitle";
import { buildRun } from "../../../src/shop/run/buildRun";
import { HALF_EMT, runOf } from "../../support/demoShoe";

test("with their numbers in them", () => {
  const { piece, number, printed, make, source, finished } = TICKET_LABELS;
  expect([piece(2, 3), number(4, 5), printed("1 May"), make(6)]).toEqual([
    ...["piece 2 of 3", "ticket 4 of 5", "printed 1 May", "Make 6"],
  ]);
  expect([source("worked examples"), finished("90°")]).toEqual([
    ...["The shoe's numbers: worked examples", "finished 90°"],
  ]);
});

test("each of the others", () => {
  expect(JSON.parse(JSON.stringify(TICKET_LABELS))).toEqual({
    ...{ job: "Job", area: "Area", conduit: "Conduit", datumEnd: "Datum end", farEnd: "Far end", shoe: "Shoe" },
    ...{ cut: "Cut", bend: "Bend", mark: "Mark", lineUp: "Line up", hook: "Hook", dial: "Dial" },
    marks: "Put every mark on the straight stick first. Measure each from the datum end.",
    straight: "Straight: cut it, nothing to bend.",
    hookEnd: { datum: "datum end", far: "far end" },
    turn: "Before it, turn the conduit",
    pastDial: "out of reach",
    shapeFlat: "Center lines, from the side",
    shape: "Center lines, bend 1 up, from behind",
    axes: ["left", "ahead", "up"],
    checks: "Check the finished piece",
    coupledOn: "Coupled on:",
    caution: "Caution",
  });
  expect(JSON.parse(JSON.stringify(TICKET_SHEET_LABELS))).toEqual({
    name: "Tickets",
    continued: "continued",
    made: "Made from Runs as it stood. When a run changes, make the tickets again.",
    columns: ["Bend", "Mark", "Line up", "Hook", "Dial", "Turn before it"],
    notMade: "Runs without tickets",
  });
});

test("tickets of one job are named for it, others and none are not", () => {
  const ticketsFor = (...jobs: string[]) =>
    jobs.flatMap((job) => ticketsOf(buildRun(runOf("up 20, east 30", { job }), HALF_EMT)));
  expect(ticketTitle(ticketsFor("Ferry", "Ferry"))).toBe("Shop tickets, Ferry");
  expect(ticketTitle(ticketsFor("Ferry", "Hall"))).toBe("Shop tickets");
  expect(ticketTitle(ticketsFor(""))).toBe("Shop tickets");
  expect(ticketTitle([])).toBe("Shop tickets");
});
