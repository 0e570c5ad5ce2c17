import { TextDecoder, TextEncoder } from "node:util";
import { screen, waitFor } from "@testing-library/react";
import { buildJob, builtRows } from "../../src/shop/job/job";
import { runsDxf } from "../../workbench/shapes";
import type { DrawingFile, DrawingWishes } from "../../taskpane/drawn/drawingWork";
import { showSetUp } from "./support/showPane";

// The page of the tests has neither, and no workers: what the worker does is done beside them.
Object.assign(globalThis, { TextDecoder, TextEncoder });
jest.mock("../../taskpane/drawn/readInWorker", () => ({
  readInWorker: (file: DrawingFile) => {
    const { openDrawing, lookAtRuns } = jest.requireActual("../../taskpane/drawn/drawingWork");
    return {
      open: async () => openDrawing(file).opened,
      look: async (wishes: DrawingWishes, onReached: (reached: unknown) => void) => {
        const steps = lookAtRuns(openDrawing(file).drawing, wishes);
        let step = steps.next();
        for (; !step.done; step = steps.next()) onReached(step.value);
        return step.value;
      },
      stop: () => undefined,
    };
  },
}));

const HEADERS = ["Run", "Raceway", "Size", "Route", "Start"];
const built = builtRows(
  buildJob({
    runs: [
      HEADERS,
      ["A", "EMT", "3/4", "up 40, east 120, offset 6 north at 30, ahead 60", "100 20 3"],
      ["B", "IMC", "1/2", "up 24, east 60", ""],
    ],
  }),
).map(({ built }) => built);

/** A file as a browser hands it over; the page of the tests cannot give its bytes. */
const fileOf = (name: string, text: string): File =>
  Object.assign(new File([text], name), { arrayBuffer: async () => new TextEncoder().encode(text).buffer });

const choose = async (name: string, text: string) => {
  const shown = await showSetUp();
  const { user } = shown;
  await user.click(screen.getByRole("button", { name: "Open a DXF or a list of points" }));
  await user.upload(await screen.findByLabelText("Choose a drawing"), fileOf(name, text));
  return shown;
};

const cellsOf = (book: Awaited<ReturnType<typeof choose>>["book"]) => {
  const [headers, ...rows] = book.cellsOf("Runs");
  return rows.map((row) => HEADERS.map((header) => row[headers!.indexOf(header)]));
};

test("a DXF becomes rows of Runs after a look at each, and they can be taken back", async () => {
  const { book, user } = await choose("job.dxf", runsDxf(built));
  expect(await screen.findByLabelText("Unit of the drawing")).toHaveProperty("value", "inches");
  expect(screen.getByLabelText("Raceway of B_IMC_1-2")).toHaveProperty("value", "IMC");
  await user.click(screen.getByRole("button", { name: "Look at the runs" }));
  await screen.findByText("2 runs: 2 as drawn, 0 a little off.");
  screen.getByText("up 40, east 120, offset 6 north at 30, ahead 60");
  await user.click(screen.getByRole("button", { name: "Add 2 runs to the Runs table" }));
  await screen.findByText("2 runs added under the last row of Runs.");
  const filled = () => cellsOf(book).filter(([run]) => run !== "" && run !== undefined && run !== null);
  expect(filled()).toEqual([
    ["A", "EMT", "3/4", "up 40, east 120, offset 6 north at 30, ahead 60", "100 20 3"],
    ["B", "IMC", "1/2", "up 24, east 60", "0 0 0"],
  ]);
  await user.click(screen.getByRole("button", { name: "Take back" }));
  await screen.findByText(/They are out again/);
  await waitFor(() => expect(filled()).toEqual([]));
});

test("a list of points waits for unit, raceway and size; one layer left out stays out", async () => {
  const { user } = await choose("points.csv", "Run,East,North,Up\nA,0,0,0\nA,0,0,4\nA,10,0,4\nB,0,0,0\nB,9,0,0\n");
  const look = () => screen.getByRole("button", { name: "Look at the runs" });
  await screen.findByText("Say the unit, and take at least one layer with its raceway and size.");
  expect(look().getAttribute("aria-disabled")).toBe("true");
  await user.selectOptions(screen.getByLabelText("Unit of the drawing"), "feet");
  await user.selectOptions(screen.getByLabelText("Raceway of A"), "EMT");
  await user.selectOptions(screen.getByLabelText("Size of A"), "1/2");
  await user.click(screen.getByRole("checkbox", { name: "Take A" }));
  await user.click(look());
  await screen.findByText("1 run: 1 as drawn, 0 a little off.");
  screen.getByText("up 48, east 120");
  screen.getByText(/1 of 1 bends drawn sharp, made at 4"/);
});

test("a file that is no drawing is refused in words, and the next one is taken", async () => {
  const { user } = await choose("old.dxf", "AC1032\0\0");
  await screen.findByText("this is a DWG; save the drawing as an ASCII DXF.");
  await user.upload(screen.getByLabelText("Choose a drawing"), fileOf("job.dxf", runsDxf(built)));
  await screen.findByRole("button", { name: "Look at the runs" });
  expect(screen.queryByText(/this is a DWG/)).toBeNull();
});
