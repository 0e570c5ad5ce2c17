/** Which tickets are printed. Every choice by hand from the table of runs below. */
import { chooseTickets, type TicketWishes } from "../../src/made/counts/ticketChoice";
import { buildJob } from "../../src/shop/job/job";
import { runsRange, type RunCells } from "../takeoff/tables";

const ALL: TicketWishes = {
  ...{ area: "", date: "", crew: "", conduit: "", bentOnly: false, notMade: false, changed: false },
};
const RUNS: RunCells[] = [
  { Run: "A-1", Area: "Quay", Date: "2026-11-02", Crew: "1", Route: "up 20, east 30", Quantity: 2 },
  { Run: "A-2", Area: "Quay", Date: "2026-11-03", Crew: "2", Route: "east 100" },
  { Run: "A-3", Area: "Hall", Date: "2026-11-03", Crew: "1", Route: "up 20, east 160", Size: "3/4" },
  { Run: "A-4", Area: "Hall", Date: "2026-11-04", Crew: "2", Route: "up 20, offset 6 up at 95" },
];
const job = buildJob({ runs: runsRange(...RUNS) });
const names = (wishes: Partial<TicketWishes>, facts = {}) =>
  chooseTickets(job, { ...ALL, ...wishes }, facts).tickets.map(({ name }) => name);

test.each<[Partial<TicketWishes>, string[]]>([
  [{}, ["A-1/1", "A-2/1", "A-3/1", "A-3/2"]],
  [{ area: "Quay" }, ["A-1/1", "A-2/1"]],
  [{ date: "2026-11-03" }, ["A-2/1", "A-3/1", "A-3/2"]],
  [{ crew: "1" }, ["A-1/1", "A-3/1", "A-3/2"]],
  [{ conduit: "EMT 3/4" }, ["A-3/1", "A-3/2"]],
  [{ crew: "1", area: "Hall", bentOnly: true }, ["A-3/1"]],
  [{ bentOnly: true }, ["A-1/1", "A-3/1"]],
  [{ area: "Roof" }, []],
])("%j", (wishes, wanted) => {
  expect(names(wishes)).toEqual(wanted);
});

test("straight pieces are counted where they are left to the cutting sheet; a run that is not built is told", () => {
  const { straight, problems, rows, choices } = chooseTickets(job, { ...ALL, bentOnly: true });
  expect(straight).toBe(2);
  expect(rows).toEqual([2, 3, 4]);
  expect(chooseTickets(job, { ...ALL, crew: "2", bentOnly: true }).rows).toEqual([3]);
  expect(problems.map(({ run }) => run)).toEqual(["A-4"]);
  expect(choices).toEqual({
    ...{ area: ["Quay", "Hall"], date: ["2026-11-02", "2026-11-03"], crew: ["1", "2"] },
    conduit: ["EMT 1/2", "EMT 3/4"],
  });
});

test("not yet made: of two one is left, so its ticket stays; what is made whole has none", () => {
  const made = [["Piece", "Good"], ["A-1", 1], ["A-2", 1], ["A-3/2", 1]]; // prettier-ignore
  expect(names({ notMade: true }, { made })).toEqual(["A-1/1", "A-3/1"]);
  expect(names({ notMade: true })).toEqual(names({}));
});

test("changed since an issue: another shape, another quantity and what is new; nothing else", () => {
  const issued = buildJob({
    runs: runsRange({ ...RUNS[0]!, Quantity: 1 }, RUNS[1]!, { ...RUNS[2]!, Route: "up 24, east 160" }),
  });
  expect(names({ changed: true }, { issued })).toEqual(["A-1/1", "A-3/1", "A-3/2"]);
  expect(names({ changed: true }, { issued: job })).toEqual([]);
});
