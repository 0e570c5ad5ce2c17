/** The trial's requests through Microsoft's Office.js: what goes at once, looks, and the way back when Excel fails. */
import { limitsPart } from "../../taskpane/trial/parts/limits";
import { sheetsPart } from "../../taskpane/trial/parts/sheets";
import { runTrial } from "../../taskpane/trial/runTrial";
import { openLocalExcel, type LocalExcel } from "./support/localExcel";

jest.setTimeout(120_000);

let local: LocalExcel;
beforeEach(async () => (local = await openLocalExcel()));
afterEach(() => local.close());

const unwatched = { onStep: () => undefined, isCanceled: () => false };
const sheetNames = () => local.book.sheets().map(({ name }) => name);

test("looks and pages: each is asked for by itself, and Microsoft's script knows them all", async () => {
  const reports = await runTrial([sheetsPart], unwatched);
  const { lines, problem } = reports[1]!;
  expect(problem).toBe("");
  expect(lines.length).toBeGreaterThan(10);
  expect(lines.filter(({ found }) => found !== "yes")).toEqual([]);
  expect(sheetNames()).toEqual(["Sheet1"]);
});

test("a request above 5 MB is refused, and the report has Excel's words for it", async () => {
  // Nothing is worked out here: only what is sent counts.
  const hasty = { ...limitsPart, run: (bench: Parameters<typeof limitsPart.run>[0]) =>
    limitsPart.run({ ...bench, until: async () => ({ answer: undefined, milliseconds: 0 }) }) }; // prettier-ignore
  const reports = await runTrial([hasty], unwatched);
  const found = (what: string) => reports[1]!.lines.find((each) => each.what === what)?.found;
  expect(found("3 MB written with one request")).toBe("yes");
  expect(found("6 MB written with one request")).toMatch(/^That is more than Excel takes at once\./);
  expect(Math.max(...local.sizes)).toBeGreaterThan(5 * 1024 * 1024);
  expect(sheetNames()).toEqual(["Sheet1"]);
});

test("Excel fails in the middle, and a cell is being edited while the sheet is to go: it goes all the same", async () => {
  let deletions = 0;
  local.fail = ({ Name }) => {
    if (Name === "TabColor") return "AccessDenied";
    if (Name !== "Delete") return undefined;
    deletions += 1;
    return deletions < 3 ? "InvalidOperationInCellEditMode" : undefined;
  };
  const reports = await runTrial([sheetsPart], unwatched);
  expect(reports[1]!.lines.find(({ what }) => what === "color of a tab")).toMatchObject({ verdict: "absent" });
  expect(deletions).toBe(3);
  expect(reports[1]!.problem).toBe("");
  expect(sheetNames()).toEqual(["Sheet1"]);
});

test("a sheet that cannot be taken away is named", async () => {
  local.fail = ({ Name }) => (Name === "Delete" ? "AccessDenied" : undefined);
  const reports = await runTrial([sheetsPart], unwatched);
  expect(reports[1]!.problem).toMatch(/protected.*Delete the sheet Trial\.$/);
  expect(reports[2]!.lines).toEqual([expect.objectContaining({ found: "left over: Trial", verdict: "differs" })]);
});
