/** The words on a ticket, whole: a translator and whoever reads a ticket rely on them. */
import { ticketsOf } from "../../../src/shop/ticket/ticket";
import { TICKET_LABELS, TICKET_SHEET_LABELS } from "../../../src/shop/ticket/ticketLabels";
import { ticketTitle } from "../../../src/shop/ticket/ticketTitle";
import { buildRun } from "../../../src/shop/run/buildRun";
import { HALF_EMT, runOf } from "../../support/demoShoe";

test("with their numbers in them", () => {
  const { piece, number, printed, make, source, finished, ofMany, code, bendNumber, lies, lieWords } = TICKET_LABELS;
  expect([ofMany(60), code("A-1/2"), bendNumber(3), lies(2), lieWords("F", "star")]).toEqual([
    ...["of 60", "Code of A-1/2", "bend 3", "How the conduit lies at the shoe in step 2"],
    "End F toward the hook at the left, the mark at the star, bending up.",
  ]);
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
    ...{ conductors: "Conductors", sawnEnds: "Sawn ends", crew: "Crew", date: "Date", issue: "Issue", by: "By" },
    ...{ tick: "Tick each when it is made", writeD: "write D on this end", letters: { datum: "D", far: "F" } },
    marks: "Write D on the datum end. Put every mark on the straight stick first; measure each from D.",
    ...{ step: "Step", lie: "At the shoe" },
    straight: "Straight: cut it, nothing to bend.",
    hookEnd: { datum: "D end", far: "F end" },
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
    columns: ["Step", "Mark", "Line up", "Hook", "Dial", "Turn before it"],
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
