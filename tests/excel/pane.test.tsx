/** The whole pane on Microsoft's Office.js over the local workbook. */
import { act, cleanup, render, screen, waitFor } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { App } from "../../taskpane/App";
import { paintForGood } from "../pane/support/canvas";
import { openLocalExcel, OURS, type LocalExcel } from "./support/localExcel";

jest.setTimeout(120_000);

let local: LocalExcel;
beforeAll(paintForGood);
beforeEach(async () => (local = await openLocalExcel()));
afterEach(() => {
  expect(Math.max(...local.sizes)).toBeLessThan(OURS);
  local.close();
});

const PATIENT = { timeout: 20_000 };

async function showPane() {
  const user = userEvent.setup();
  render(<App />);
  await act(async () => undefined);
  return user;
}

const sheetNames = () => local.book.sheets().map(({ name }) => name);
/** What the person types in the first row of Runs. */
function put(header: string, value: string): void {
  const [headers] = local.book.range("Runs!A1:Z1").values;
  local.book
    .sheet("Runs")
    .cells(1, headers!.indexOf(header))
    .setValues([[value]]);
}
const cell = (address: string) => local.book.range(address).values[0]![0];

async function setUp() {
  const user = await showPane();
  await user.click(await screen.findByRole("button", { name: "Set up" }, PATIENT));
  await screen.findByText(/This workbook is set up/, undefined, PATIENT);
  return user;
}

test("an empty workbook: set up, a run, its tickets in the workbook", async () => {
  const user = await setUp();
  expect(sheetNames()).toEqual(expect.arrayContaining(["Runs", "Schedule", "Takeoff", "Shoes", "Rules"]));
  expect(sheetNames()).not.toContain("Sheet1");
  expect(local.book.range("Schedule!A1").formulas[0]![0]).toMatch(/^=CONDUIT\.JOB\.SCHEDULE\(Runs/);
  await user.click(screen.getByRole("tab", { name: "A run" }));
  await user.click(await screen.findByRole("button", { name: "Add a run" }, PATIENT));
  await screen.findByText(/No steps yet/, undefined, PATIENT);
  await act(async () => put("Route", "stub 10 up, east 5'"));
  await screen.findByRole("textbox", { name: "Step 2" }, PATIENT);
  await user.click(screen.getByRole("tab", { name: "Tickets" }));
  await user.click(await screen.findByRole("button", { name: "Put in the workbook" }, PATIENT));
  await screen.findByText(/The tickets stand on the new sheet/, undefined, PATIENT);
  const tickets = sheetNames().find((name) => name.startsWith("Tickets"))!;
  expect(String(cell(`'${tickets}'!A1`))).toMatch(/^Shop tickets/);
});

test("a set-up that Excel fails leaves nothing, says so, and goes through at the next press", async () => {
  const user = await showPane();
  const button = await screen.findByRole("button", { name: "Set up" }, PATIENT);
  local.fail = ({ Name, ArgumentInfo }) =>
    Name === "Formulas" && JSON.stringify(ArgumentInfo).includes("CONDUIT.JOB.CUTS") ? "AccessDenied" : undefined;
  await user.click(button);
  await screen.findByText(/protected.*What was made of it is taken away again/, undefined, PATIENT);
  expect(sheetNames()).toEqual(["Sheet1"]);
  local.fail = () => undefined;
  await user.click(button);
  await screen.findByText(/This workbook is set up/, undefined, PATIENT);
});

test("pressed again at once, while Excel still hands over how the half-made set-up looked, it goes through as well", async () => {
  const user = await showPane();
  const button = await screen.findByRole("button", { name: "Set up" }, PATIENT);
  local.fail = ({ Name, ArgumentInfo }) => {
    if (Name !== "Formulas" || !JSON.stringify(ArgumentInfo).includes("CONDUIT.JOB.CUTS")) return undefined;
    local.slowness = 400;
    return "AccessDenied";
  };
  await user.click(button);
  await screen.findByText(/protected.*What was made of it is taken away again/, undefined, PATIENT);
  local.fail = () => undefined;
  await user.click(button);
  local.slowness = 0;
  await screen.findByText(/This workbook is set up/, undefined, PATIENT);
  expect(sheetNames()).toEqual(expect.arrayContaining(["Runs", "Schedule", "Cutting plan", "Shoes"]));
});

test("a set-up that broke half way and could not be taken away is known to a fresh pane, which goes on with it", async () => {
  const user = await showPane();
  const button = await screen.findByRole("button", { name: "Set up" }, PATIENT);
  let broken = false;
  local.fail = ({ Name, ArgumentInfo }) => {
    broken ||= Name === "Formulas" && JSON.stringify(ArgumentInfo).includes("CONDUIT.JOB.CUTS");
    return broken ? "AccessDenied" : undefined;
  };
  await user.click(button);
  await screen.findByText(/protected.*Half of it may stand in the workbook/, undefined, PATIENT);
  cleanup();
  local.fail = () => undefined;
  put("Route", "up 30, east 40");
  const later = await showPane();
  const words = await screen.findByText(/A set-up of this workbook broke half way/, undefined, PATIENT);
  expect(words.textContent).toMatch(
    /Runs, Counts, Checks.* are begun\. It goes on there, and writes into empty cells alone/,
  );
  await later.click(screen.getByRole("button", { name: "Go on with the set-up" }));
  await screen.findByText(/This workbook is set up/, undefined, PATIENT);
  expect(sheetNames().filter((name) => / 2$/.test(name))).toEqual([]);
  expect(local.book.range("'Cutting plan'!A1").formulas[0]![0]).toMatch(/^=CONDUIT\.JOB\.CUTS/);
  // What the person wrote in the half-made Runs is there, and its row has its formulas.
  const { values, formulas } = local.book.range("Runs!A1:AN2");
  expect(values[1]![values[0]!.indexOf("Route")]).toBe("up 30, east 40");
  expect(formulas[1]![values[0]!.indexOf("Check")]).toMatch(/CONDUIT\.RUN\.CHECK/);
});

test("in the middle of a cell reads wait or are tried again, writes say what to do", async () => {
  const user = await showPane();
  const button = await screen.findByRole("button", { name: "Set up" }, PATIENT);
  local.refuse = () => "InvalidOperationInCellEditMode";
  await user.click(button);
  await screen.findByText(
    /Press Enter or Esc in the sheet, then try again\. Nothing was changed\./,
    undefined,
    PATIENT,
  );
  expect(sheetNames()).toEqual(["Sheet1"]);
  local.refuse = () => undefined;
  // Off until the sheet is read again.
  const isOff = () => screen.getByRole("button", { name: "Set up" }).getAttribute("aria-disabled") === "true";
  await waitFor(() => expect(isOff()).toBe(false), PATIENT);
  await user.click(screen.getByRole("button", { name: "Set up" }));
  await screen.findByText(/This workbook is set up/, undefined, PATIENT);
});

test("a change in the sheet reaches the pane, though the reading after it fails at first", async () => {
  const user = await setUp();
  await user.click(screen.getByRole("tab", { name: "A run" }));
  const [headers] = local.book.range("Runs!A1:Z1").values;
  const put = (header: string, value: string) =>
    local.book
      .sheet("Runs")
      .cells(1, headers!.indexOf(header))
      .setValues([[value]]);
  let refused = 0;
  local.refuse = () => (refused++ < 2 ? "RequestAborted" : undefined);
  await act(async () => {
    put("Run", "P-7");
    put("Route", "up 30, east 40");
  });
  await screen.findByText("The pane is behind the sheet", undefined, PATIENT);
  await screen.findByRole("option", { name: "P-7" }, PATIENT);
  expect(refused).toBeGreaterThan(2);
});
