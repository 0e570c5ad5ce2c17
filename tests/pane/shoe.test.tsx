import { screen, waitFor } from "@testing-library/react";
import { showSetUp } from "./support/showPane";

async function openShoe() {
  const shown = await showSetUp();
  await shown.user.click(screen.getByRole("tab", { name: "The shoe" }));
  await screen.findByRole("textbox", { name: "Cut length" });
  const fill = async (values: Record<string, string>) => {
    for (const [label, text] of Object.entries(values)) {
      await shown.user.type(screen.getByRole("textbox", { name: label }), text);
    }
  };
  return { ...shown, fill };
}

/**
 * Derived, GEOMETRY "Test bend": radius 4, deduct 5, 1/2 EMT (0.706 in.) has a back gain of 2 × 4.353 − 2π = 2.422815;
 * 36 in. cut, mark at 7: stub 7 + 5 = 12, leg 36 + 2.422815 − 12.
 */
const TEST_BEND = {
  "Cut length": "36",
  "Mark from the end": "7",
  "Dial reached": "94",
  "Angle after": "90",
  "Stub, end to back": "12",
  "Leg, end to back": "26.422815",
};

const shoeRow = (cells: (string | number | boolean)[][], raceway: string, size: string) => {
  const row = cells.find((line) => line[0] === raceway && line[1] === size) ?? [];
  return Object.fromEntries((cells[0] ?? []).map((header, place) => [String(header), row[place]]));
};

test("one test bend gives the shoe, and the shoe's row of Shoes takes it", async () => {
  const { book, user, fill } = await openShoe();
  expect(screen.getByText(/^NOT MEASURED \(source: /)).toBeTruthy();
  await fill(TEST_BEND);
  await user.click(await screen.findByRole("button", { name: "Write into the EMT 1/2 row of Shoes" }));
  await screen.findByText(/The Shoes table holds the measured values/);
  expect(shoeRow(book.cellsOf("Shoes"), "EMT", "1/2")).toMatchObject({
    Radius: 4,
    Deduct: 5,
    Springback: 4,
    "Dial to": 105,
    "Second test": "",
    Source: "one test bend",
  });
  expect(
    screen.getByText(/^MEASURED [\d-]{10}, radius ± 0\.22 in\..* \(source: shoes row 2: one test bend\)\.$/),
  ).toBeTruthy();
  // By hand: a sixteenth's half on each of four readings, over 2 − π/2: radius ± 0.22; deduct ± 0.06.
  expect(String(shoeRow(book.cellsOf("Shoes"), "EMT", "1/2").Measured)).toMatch(
    /^\d{4}-\d{2}-\d{2}, radius ± 0\.22 in\., deduct ± 0\.06 in\.$/,
  );
});

test("a second bend at another angle goes into the row with the first; half of one is still open", async () => {
  const { book, user, fill } = await openShoe();
  await fill({ ...TEST_BEND, "Second bend, dial reached": "31.5" });
  expect(screen.queryByRole("button", { name: /Write into/ })).toBeNull();
  await fill({ "Second bend, angle after": "30" });
  await user.click(await screen.findByRole("button", { name: "Write into the EMT 1/2 row of Shoes" }));
  await screen.findByText(/The Shoes table holds the measured values/);
  expect(shoeRow(book.cellsOf("Shoes"), "EMT", "1/2")).toMatchObject({
    Springback: 4,
    "Second test": "30 at 31.5",
    Source: "two test bends",
  });
});

test("a springback is kept as that of a 90: 3.6 at an angle of 81 is 4 at 90", async () => {
  const { book, user, fill } = await openShoe();
  await fill({ ...TEST_BEND, "Dial reached": "84.6", "Angle after": "81" });
  await user.click(await screen.findByRole("button", { name: "Write into the EMT 1/2 row of Shoes" }));
  await waitFor(() => expect(shoeRow(book.cellsOf("Shoes"), "EMT", "1/2")).toMatchObject({ Springback: 4 }));
});

test("measures that no shoe of the size has are doubted before they are saved", async () => {
  const { fill } = await openShoe();
  // The mark a foot too near the end: the arrow would stand 12.65 in. before the bend.
  await fill({ ...TEST_BEND, "Stub, end to back": "24", "Leg, end to back": "14.422815" });
  expect(await screen.findByText(/The arrow would stand 12\.65 in\. before the start of the bend/)).toBeTruthy();
});

test("the lengths to cut and to mark suit the size", async () => {
  const { user } = await openShoe();
  expect(await screen.findByText(/Cut a straight piece about 1' 9" long\. Pencil a mark about 6" from/)).toBeTruthy();
  await user.selectOptions(screen.getByRole("combobox", { name: "Size" }), "4");
  // By hand: 3 × 4.5 = 13.5 of straight at each end, mark at 14; 14 + 24·(1/2 + π/2) + 13.5 = 77.2.
  expect(
    await screen.findByText(/Cut a straight piece about 6' 6" long\. Pencil a mark about 1' 2" from/),
  ).toBeTruthy();
});

test("what stood in the row comes back", async () => {
  const { book, user, fill } = await openShoe();
  const before = shoeRow(book.cellsOf("Shoes"), "EMT", "1/2");
  await fill({ ...TEST_BEND, "Mark from the end": "6.5" });
  await user.click(await screen.findByRole("button", { name: "Write into the EMT 1/2 row of Shoes" }));
  await waitFor(() => expect(shoeRow(book.cellsOf("Shoes"), "EMT", "1/2")).toMatchObject({ Deduct: 5.5 }));
  await user.click(await screen.findByRole("button", { name: "Take back" }));
  await waitFor(() => expect(shoeRow(book.cellsOf("Shoes"), "EMT", "1/2")).toEqual(before));
});

test("a shoe that Shoes does not have gets a row of its own", async () => {
  const { book, user, fill } = await openShoe();
  await user.selectOptions(screen.getByRole("combobox", { name: "Size" }), "1-1/4");
  await fill({ ...TEST_BEND, "Leg, end to back": "28" });
  const rows = () => book.cellsOf("Shoes").filter((row) => row.some((cell) => cell !== ""));
  const before = rows();
  await user.click(await screen.findByRole("button", { name: "Add EMT 1-1/4 to Shoes" }));
  await waitFor(() => expect(rows().at(-1)?.slice(0, 2)).toEqual(["EMT", "1-1/4"]));
  await user.click(await screen.findByRole("button", { name: "Take back" }));
  await waitFor(() => expect(rows()).toEqual(before));
  // Added again, it stands where it stood: no empty row is left between.
  await user.click(await screen.findByRole("button", { name: "Add EMT 1-1/4 to Shoes" }));
  await waitFor(() => expect(book.cellsOf("Shoes")[before.length]?.slice(0, 2)).toEqual(["EMT", "1-1/4"]));
});

test("measures that do not belong to a bend are refused in words", async () => {
  const { fill } = await openShoe();
  await fill({ ...TEST_BEND, "Leg, end to back": "24" });
  expect((await screen.findByRole("alert")).textContent).toMatch(/stub and leg must come to more than/);
  expect(screen.queryByRole("button", { name: /Write into/ })).toBeNull();
});

test("what was typed is still there after a look at another view", async () => {
  const { user, fill } = await openShoe();
  await fill({ "Cut length": "33" });
  await user.click(screen.getByRole("tab", { name: "Start" }));
  await user.click(screen.getByRole("tab", { name: "The shoe" }));
  expect((await screen.findByRole<HTMLInputElement>("textbox", { name: "Cut length" })).value).toBe("33");
});
