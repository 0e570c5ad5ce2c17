/** Shoes that were never measured are told once a job, with what it does to the marks. [in] */
import { jobChecks } from "../../../functions/job/jobs";
import { runMarks } from "../../../functions/job/runs";

const RULE = "a shoe is measured before its marks are trusted (common practice)";
const RUNS = [
  ["Run", "Raceway", "Size", "Route"],
  ["A-1", "EMT", "1/2", "up 40, east 60"],
  ["A-2", "EMT", "1/2", "up 40, east 60"],
  ["A-3", "RMC", "1", "up 40, east 60"],
  ["A-4", "EMT", "1", "east 60"],
];
const HEADERS = ["Raceway", "Size", "Radius", "Deduct", "Measured"];
const told = (shoes?: unknown[][]) => jobChecks(RUNS, shoes).filter((row) => row[2] === RULE);

test("each shoe that bends a run and was never measured has one line; straight runs need none", () => {
  expect(told().map(([run, weight, , finding]) => [run, weight, String(finding).split(":")[0]])).toEqual([
    ["Shoes", "look", "EMT 1/2 is NOT MEASURED"],
    ["Shoes", "look", "RMC 1 is NOT MEASURED"],
  ]);
  const measured = [HEADERS, ["EMT", "1/2", 4, 5, "2026-11-02"], ["RMC", "1", 7.25, 11, ""]];
  expect(told(measured).map(([, , , finding]) => String(finding).slice(0, 21))).toEqual(["RMC 1 is NOT MEASURED"]);
});

test("what an inch of radius does to marks and cut is what the schedule shows", () => {
  const marks = (route: string, radius: number) => {
    const rows = runMarks(route, "EMT", "1/2", [HEADERS.slice(0, 4), ["EMT", "1/2", radius, 5]]);
    return { mark: Number(rows[1]![5]), cut: Number(rows[1]![2]) };
  };
  const change = (route: string, of: "mark" | "cut") => marks(route, 4.5)[of] - marks(route, 3.5)[of];
  const words = String(told()[0]![3]);
  expect(change("stub 20 up, east 60", "mark")).toBeCloseTo(0, 9);
  expect(words).toContain("a stub-up's mark stays");
  expect(words).toContain(`its conduit is cut ${(-change("stub 20 up, east 60", "cut")).toFixed(2)} in. too long`);
  expect(words).toContain(
    `arrow's mark of a 30 lies ${change("east 20, bend 30 up, ahead 40", "mark").toFixed(2)} in.`,
  );
  expect(words).toContain(`of a 45 ${change("east 20, bend 45 up, ahead 40", "mark").toFixed(2)} in.`);
});

const UNION = "threaded bent pieces between fixed ends need a union (common practice)";

test("a threaded run whose bent piece is turned onto a coupling needs a union; EMT and threadless fittings do not", () => {
  const found = (raceway: string, fittings = "", route = "east 130, up 60, east 40") =>
    jobChecks([
      ["Run", "Raceway", "Size", "Route", "Fittings"],
      ["A", raceway, "1", route, fittings],
    ])
      .filter((row) => row[2] === UNION)
      .map((row) => String(row[3]).split(":")[0]);
  expect(found("RMC")).toEqual(["piece 2"]);
  expect(found("EMT")).toEqual([]);
  expect(found("RMC", "compression")).toEqual([]);
  expect(found("RMC", "", "east 130")).toEqual([]);
});
