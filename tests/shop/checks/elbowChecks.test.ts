/** Room for elbows and pieces. By hand; RMC 4: R 16, straight ends 3.375 (from memory), thread 1.3 (ASME B1.20.1). [in] */
import { jobChecks } from "../../../functions/job/jobs";

const found = (raceway: string, size: string, route: string, ...rules: (string | number)[][]): string[] =>
  jobChecks(
    [
      ["Run", "Raceway", "Size", "Route"],
      ["A", raceway, size, route],
    ],
    undefined,
    undefined,
    [["Rule", "Value"], ...rules],
  )
    .slice(1)
    .filter(([run, , rule]) => run === "A" && !/no shoe|union/.test(String(rule)))
    .map((row) => `${row[1]}: ${row[3]} ${row[4]}`);

test("two elbows that just meet are nothing to find; an inch less is, with what to do", () => {
  expect(found("RMC", "4", "up 60, east 38.75, up 60")).toEqual([]);
  expect(found("RMC", "4", "up 60, east 37.75, up 60")).toEqual([
    "stop: between the elbow of step 2 and the elbow of step 3 are 5.75 in. of straight conduit; straight ends of elbows take " +
      "6.75 in., 3.375 in. each: 1 in. short. Make that leg 1 in. longer, or cut the elbow's end back where enough of it is left for its fitting.",
  ]);
});

test("an elbow nearer to a box than its end is long", () => {
  expect(found("RMC", "4", "up 19.375, east 60")).toEqual([]);
  expect(found("RMC", "4", "up 18, east 60")).toEqual([
    expect.stringMatching(
      /^stop: between the end of the pull and the elbow of step 2 are 2 in\. .* take 3\.375 in\.: 1\.375 in\. short\./,
    ),
  ]);
  expect(found("RMC", "4", "up 60, east 18, box, east 30")).toEqual([
    expect.stringMatching(/^stop: between the elbow of step 2 and the end of the pull are 2 in\./),
  ]);
});

test("a piece too short to be threaded on both ends, and what would do", () => {
  // Two threads of 1.3; a leg of 2 × 19.375 + 2.5 leaves 2.5.
  expect(found("RMC", "4", "up 60, east 41.35, up 60")).toEqual([]);
  expect(found("RMC", "4", "up 60, east 41.25, up 60")).toEqual([
    "stop: piece 2 is 2.5 in. long; the thread on each end takes 1.3 in. Make its leg 0.1 in. longer, or 2.5 in. shorter, so that what stands on both sides of it meets.",
  ]);
});

test("a piece of PVC shorter than the sockets take of it", () => {
  // Size 2: R 9.5, ends 2, sockets 1.125 (TC 3, from memory).
  expect(found("PVC 40", "2", "up 60, east 25.25, up 60")).toEqual([]);
  expect(found("PVC 40", "2", "up 60, east 25, up 60")).toEqual([
    expect.stringMatching(
      /^stop: piece 2 is 2 in\. long; its couplings take, each, 1\.125 in\. Make its leg 0\.25 in\. longer/,
    ),
  ]);
  // At the box only one end is in a socket.
  expect(found("PVC 40", "2", "up 12.5, east 60")).toEqual([
    expect.stringMatching(/^stop: piece 1 is 1 in\. long; its coupling takes 1\.125 in\./),
  ]);
});

test("a bend of the shop where the elbow's coupling must sit", () => {
  const buy = [["Factory elbows above size, metal", "1/2"], ["Factory elbow angles", 90]]; // prettier-ignore
  // EMT 3/4, R 4.5, no straight ends known: 4.5·tan 15° = 1.2058; a coupling takes 1.
  expect(found("EMT", "3/4", "up 40, east 6.8, bend 30 up, ahead 40", ...buy)).toEqual([]);
  expect(found("EMT", "3/4", "up 40, east 6.6, bend 30 up, ahead 40", ...buy)).toEqual([
    expect.stringMatching(
      /^stop: piece 2: 0\.8942 in\. of straight conduit between a bend and the coupling on its datum end; the coupling takes 1 in\. Make the leg 0\.1058 in\. longer\.$/,
    ),
  ]);
});
