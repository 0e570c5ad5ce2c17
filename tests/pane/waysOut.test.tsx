/** Printing and saving are offered only where this Excel lets a pane do them; nothing is announced that nobody sees. */
import { act, screen } from "@testing-library/react";
import { waysOut } from "../../taskpane/excel";
import { paintForGood } from "./support/canvas";
import { showRuns } from "./support/showPane";

const RUNS = [["P-1", "Quay", "Hall", "EMT", "1/2", "stub 10 up, east 5'", 2]];

/** Excel says that it runs there; undefined is the page without Excel, which says nothing. */
function be(platform: string | undefined): void {
  if (platform === undefined) Reflect.deleteProperty(globalThis, "Office");
  else Object.assign(globalThis, { Office: { context: { platform } } });
}
afterEach(() => be(undefined));

/** The pane at a tab, on one platform. */
async function open(platform: string | undefined, tab: string) {
  paintForGood();
  const shown = await showRuns(RUNS, tab);
  be(platform);
  // Seen anew, as when the pane opens there.
  await act(async () => shown.book.type(shown.sheet, 1, 0, "P-2"));
  return shown;
}

const WORKBOOK = "Put in the workbook";

test.each([
  ["PC", ["Print", "Save as a page", WORKBOOK], /save the page, open it in a browser/],
  ["OfficeOnline", [WORKBOOK, "Print", "Save as a page"], /works in every Excel/],
  ["Mac", [WORKBOOK], /lets a pane neither print nor save files, as on a Mac/],
  ["iOS", [WORKBOOK], /lets a pane neither print nor save files/],
  [undefined, ["Print", "Save as a page", WORKBOOK], /save the page, open it in a browser/],
])("tickets on %s: %j", async (platform, ways, words) => {
  await open(platform, "Tickets");
  await screen.findByText(words);
  const shown = screen.getAllByRole("button").map(({ textContent }) => textContent ?? "");
  expect(shown.filter((name) => ["Print", "Save as a page", WORKBOOK].includes(name))).toEqual(ways);
});

test("on a Mac the job for a tablet is copied; what may not be copied stands selected, with what to press", async () => {
  const { user } = await open("Mac", "Bender");
  const button = await screen.findByRole("button", { name: "Copy the job" });
  expect(screen.queryByRole("button", { name: "Save the job" })).toBeNull();
  const written: string[] = [];
  const clipboard = jest.spyOn(navigator.clipboard, "writeText");
  clipboard.mockImplementation(async (text) => void written.push(text));
  await user.click(button);
  await screen.findByText(/^Copied: this Excel lets a pane save no file/);
  expect(JSON.stringify(JSON.parse(written[0]!))).toContain("stub 10 up, east 5'");

  clipboard.mockRejectedValue(new Error("not allowed"));
  await user.click(screen.getByRole("button", { name: "Copy the job" }));
  await screen.findByText(/press Ctrl\+C \(on a Mac Command\+C\)/);
  const field = screen.getByRole<HTMLTextAreaElement>("textbox", { name: "The same as text" });
  expect(field.value.slice(field.selectionStart, field.selectionEnd)).toBe(written[0]);
  expect(screen.queryByText(/^Copied/)).toBeNull();
});

test("on Windows the job for a tablet is saved", async () => {
  await open("PC", "Bender");
  expect(await screen.findByRole("button", { name: "Save the job" })).toBeTruthy();
  expect(screen.queryByRole("button", { name: "Copy the job" })).toBeNull();
});

test("nothing that saves is offered where Excel does not say what it is", () => {
  be("Universal");
  expect(waysOut()).toEqual({ prints: false, saves: false, workbookFirst: true });
});
