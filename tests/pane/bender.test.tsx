/** The view at the bender: followed by its words alone, and what it records. */
import { act, cleanup, render, screen, waitFor } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { readMade } from "../../src/made/records/madeTable";
import { MADE_HEADERS, recordsText, type RecordCells } from "../../src/made/records/recordsText";
import { buildRun } from "../../src/shop/run/buildRun";
import type { BuiltRun } from "../../src/shop/run/builtRun";
import { labelOf } from "../../src/shop/ticket/pieceLabel";
import { ticketsOf, type Ticket } from "../../src/shop/ticket/ticket";
import { Bender } from "../../taskpane/bender/Bender";
import { pieceOfCode } from "../../taskpane/bender/pieceOfCode";
import { readings } from "../../taskpane/bender/Measured";
import { misfit } from "../simulator/alignRigid";
import type { Centerline } from "../simulator/centerline";
import { followTickets } from "../simulator/followTicket";
import { HALF_EMT, runOf } from "../support/demoShoe";
import type { FakeBook } from "./support/fakeBook";
import { showSetUp } from "./support/showPane";

const SHOE = { ...HALF_EMT, springback: 3, shortestTail: 3 };
const user = userEvent.setup();

function show(
  tickets: readonly Ticket[],
  record: (records: readonly RecordCells[]) => Promise<void> = () => Promise.resolve(),
) {
  render(<Bender tickets={tickets} style="feet" madeOf={() => 0} record={record} />);
}

/** What stands under a name in the view. */
const fact = (name: string): string => screen.getByText(name, { selector: "dt" }).nextElementSibling!.textContent!;
const press = (name: string) => user.click(screen.getByRole("button", { name }));

/** A ticket's text put together from nothing but what the view says, step by step. */
async function wordsOfView(name: string): Promise<string> {
  await user.click(screen.getByRole("button", { name: new RegExp(`^${name}`) }));
  const [run, piece] = name.split("/");
  const lines = [
    `RUN ${run}`,
    `Piece ${piece} of 9; make 1`,
    `Shoe: ${fact("Shoe")} (as said)`,
    `Cut length: ${fact("Cut")}`,
  ];
  for (;;) {
    await press("Next");
    const heading = screen.getByRole("heading", { level: 4 }).textContent!;
    const step = /^Step (\d+) of \d+ bend (\d+), (.+)$/.exec(heading);
    if (!step) break;
    const [dial, finished] = /^(.+?) for a finished (.+)$/.exec(fact("Dial"))!.slice(1);
    lines.push(
      `Step ${step[1]}, bend ${step[2]} (${step[3]}): mark at ${fact("Mark")}`,
      `  Turn: ${fact("Turn")}`,
      `  Line up: ${fact("Line up")}`,
      `  Hook: toward the ${fact("Hook").startsWith("D") ? "datum" : "far"} end`,
      `  Dial: ${dial}, for a finished ${finished}`,
    );
  }
  return lines.join("\n");
}

/** Farthest that what comes of the words lies from the run [in]; endless where nobody can follow them. */
function off(text: string, built: BuiltRun): number {
  let made: Centerline;
  try {
    [made] = followTickets([text]) as [Centerline];
  } catch {
    return Infinity;
  }
  return misfit(made.points, built.pulls[0]!.pull.points);
}

describe("three pieces made in the simulation from the words of the view alone", () => {
  // A half sixteenth in each mark and cut and half a hundredth of a degree in each turn, over these lengths: below 1/2 in.
  const ALLOWED = 0.5;
  test.each([
    ["a stub and a back-to-back", "up 20, east 40, down 20"],
    ["a saddle with its notch", "up 30, east 40, saddle 4 up at 45, ahead 40"],
    ["bends in three planes", "up 20, east 30, north 30, offset 5 up at 30, ahead 30"],
  ])("%s", async (_, route) => {
    const built = buildRun(runOf(route, { stick: 240 }), SHOE);
    const tickets = ticketsOf(built);
    expect(tickets).toHaveLength(1);
    show(tickets);
    const text = await wordsOfView(tickets[0]!.name);
    expect(off(text, built)).toBeLessThan(ALLOWED);
    // One word that is wrong, whichever it is, and it does not fit or cannot be followed.
    const flips: [what: RegExp, by: string][] = [
      [/Line up: arrow/, "Line up: star"],
      [/Dial: [\d.]+°/, "Dial: 77°"],
      [/mark at \d+'/, "mark at 6'"],
      [/toward the datum end|toward the far end/, "toward the other end"],
      ...(/Turn: turn 180°/.test(text) ? [[/Turn: turn 180°/, "Turn: do not turn"] as [RegExp, string]] : []),
      ...(/ counterclockwise/.test(text) ? [[/ counterclockwise/, " clockwise"] as [RegExp, string]] : []),
    ];
    for (const [what, by] of flips) {
      expect({ text, has: what.test(text) }).toEqual({ text, has: true });
      expect({ by, off: off(text.replace(what, by), built) > ALLOWED }).toEqual({ by, off: true });
    }
    cleanup();
  });
});

describe("what is recorded", () => {
  const [ticket] = ticketsOf(buildRun(runOf("up 20, east 40, down 20", { name: "Q-1", quantity: 2, crew: "B" }), SHOE));
  const kept: RecordCells[] = [];
  const read = () => readMade([[...MADE_HEADERS], ...kept.map((each) => MADE_HEADERS.map((name) => each[name] ?? ""))]);
  beforeEach(() => {
    kept.length = 0;
    show([ticket!], (records) => Promise.resolve(void kept.push(...records)));
  });
  const open = () => user.click(screen.getByRole("button", { name: /^Q-1\/1/ }));

  test("made, with who made it, the shape and a day; then the next one begins", async () => {
    await open();
    for (let step = 0; step < 3; step++) await press("Next");
    await user.type(screen.getByRole("textbox", { name: "By" }), "Ida");
    await press("Made");
    expect(await screen.findByText("Q-1/1 recorded as made.")).toBeTruthy();
    expect(screen.getByRole("heading", { level: 4 }).textContent).toBe("Mark the stick");
    expect(read().problems).toEqual([]);
    expect(read().records).toMatchObject([
      { piece: "Q-1/1", good: 1, scrapped: 0, by: "Ida", crew: "B", shape: ticket!.code, raceway: "EMT", size: "1/2" },
    ]);
    expect(String(kept[0]!["Date"])).toMatch(/^\d{4}-\d\d-\d\d$/);
  });

  test("scrapped with a reason, from the middle of the piece", async () => {
    await open();
    await press("Next");
    await press("Scrapped");
    await press("wrong turn");
    await screen.findByText("Q-1/1 recorded as scrapped.");
    expect(read().records).toMatchObject([{ good: 0, scrapped: 1, note: "wrong turn" }]);
  });

  test("dial and angle of two bends: one row counts the piece, the other only measures; each Id is its own", async () => {
    await open();
    for (const [dial, angle] of [
      ["93", "90,5"],
      ["92.5", "89"],
    ]) {
      await press("Next");
      await user.type(screen.getByLabelText("Dial reached [°]"), dial!);
      await user.type(screen.getByLabelText("Angle measured [°]"), angle!);
    }
    await press("Made");
    await screen.findByText("Q-1/1 recorded as made.");
    const { records, problems } = read();
    expect(problems).toEqual([]);
    expect(records.map(({ good, measured }) => [good, measured])).toEqual([
      [1, { bend: 1, dial: 93, angle: 90.5 }],
      [0, { bend: 2, dial: 92.5, angle: 89 }],
    ]);
    expect(new Set(kept.map(({ Id }) => Id)).size).toBe(2);
  });

  test("a dial without its angle is not recorded; what was typed stays", async () => {
    await open();
    await press("Next");
    await user.type(screen.getByLabelText("Dial reached [°]"), "93");
    await press("Made");
    expect(screen.getByRole("alert").textContent).toBe("Write both the dial and the angle, in degrees, or neither.");
    expect(kept).toEqual([]);
    expect(screen.getByLabelText<HTMLInputElement>("Dial reached [°]").value).toBe("93");
  });

  test.each([
    [{ dial: "93", angle: "" }, undefined],
    [{ dial: "0", angle: "90" }, undefined],
    [{ dial: "93°", angle: "90" }, [{ bend: 4, dial: 93, angle: 90 }]],
    [{ dial: " ", angle: "" }, []],
    [{ dial: "ninety", angle: "90" }, undefined],
    [{ dial: "271", angle: "90" }, undefined],
  ])("%j is read as %j", (typed, wanted) => {
    expect(readings({ 4: typed })).toEqual(wanted);
  });
});

test("a record that cannot be kept is said, and the piece stays where it is", async () => {
  const [ticket] = ticketsOf(buildRun(runOf("up 20, east 40"), SHOE));
  show([ticket!], () => Promise.reject(new Error("the sheet is protected.")));
  await user.click(screen.getByRole("button", { name: /^A-1\/1/ }));
  await press("Made");
  expect(await screen.findByText("Not recorded: the sheet is protected.")).toBeTruthy();
  expect(screen.getByRole("button", { name: "Made" })).toBeTruthy();
});

describe("in the pane", () => {
  const RUNS = [["P-1", "Quay", "Hall", "EMT", "1/2", "stub 10 up, east 5'", 2]];

  async function openBender(withMade: boolean) {
    const shown = await showSetUp();
    const sheet = shown.book.sheet("Runs");
    RUNS.forEach((cells, row) => cells.forEach((cell, column) => sheet.put(row + 1, column, cell)));
    shown.book.table("Runs").rows = RUNS.length + 1;
    if (!withMade) shown.book.tables.splice(shown.book.tables.indexOf(shown.book.table("Made")), 1);
    await act(async () => shown.book.type(sheet, 1, 6, 2));
    await shown.user.click(screen.getByRole("tab", { name: "Bender" }));
    return shown;
  }

  test("a piece that is made stands in Made and counts at once", async () => {
    const { user, book } = await openBender(true);
    await user.click(await screen.findByRole("button", { name: /^P-1\/1/ }));
    await waitFor(() => expect(screen.getByText("0 of 2 made")).toBeTruthy());
    await user.click(screen.getByRole("button", { name: "Made" }));
    await screen.findByText("1 of 2 made");
    expect(["Piece", "Good", "Scrapped"].map((name) => madeCell(book, 1, name))).toEqual(["P-1/1", 1, 0]);
    await user.click(screen.getByRole("tab", { name: "Totals" }));
    await user.click(await screen.findByRole("tab", { name: "Made" }));
    await screen.findByText("1 of 2 pieces made, 1 left, 0 scrapped. 1 of 2 bends made.");
    const drawing = screen.getByRole("img", { name: /Pieces made and scrapped by day/ });
    expect(drawing.textContent).toMatch(/\d{4}-\d\d-\d\d: 1 made, 0 scrapped, 1 left\./);
  });

  test("records of a tablet are added once, however often they are pasted", async () => {
    const { user, book } = await openBender(true);
    const text = recordsText([{ Piece: "P-1/1", Good: 1, Id: "t1", Date: "2026-12-01", Shape: "" }]);
    const paste = async (words: string) => {
      await user.click(screen.getByRole("textbox", { name: "Paste records here" }));
      await user.paste(words);
      await user.click(screen.getByRole("button", { name: "Add to Made" }));
    };
    await screen.findByRole("textbox", { name: "Paste records here" });
    await paste(text);
    await screen.findByText("1 record added.");
    await paste(text);
    await screen.findByText("0 records added, 1 were there already.");
    await paste(text.replace("\t1\t", "\t2\t"));
    await screen.findByText(/^Record t1 says something else here and was not added: Good is 1 here, 2 there\.$/);
    expect([madeCell(book, 1, "Piece"), madeCell(book, 2, "Piece")]).toEqual(["P-1/1", ""]);
  });

  test("without a Made table nothing is recorded, and the view says so", async () => {
    const { user, book } = await openBender(false);
    expect(book.tables.map(({ name }) => name)).not.toContain("Made");
    await screen.findByText(/no Made table yet/);
    await user.click(screen.getByRole("button", { name: /^P-1\/1/ }));
    expect(screen.getByRole<HTMLButtonElement>("button", { name: "Made" }).disabled).toBe(true);
  });

  /** What stands under a header of the Made table, in a row counted from 1. */
  function madeCell(book: FakeBook, row: number, name: string) {
    const { sheet, row: top, column, columns } = book.table("Made");
    const place = Array.from({ length: columns }, (_, each) => column + each).find(
      (each) => sheet.at(top, each) === name,
    );
    return sheet.at(top + row, place!);
  }
});

test("a code leads to its piece; one that changed since says both shapes; another job's says so", () => {
  const tickets = ticketsOf(buildRun(runOf("up 20, east 40"), SHOE));
  const label = labelOf(tickets[0]!);
  expect(pieceOfCode(tickets, label)).toEqual({ name: "A-1/1", words: "" });
  expect(pieceOfCode(tickets, { ...label, shape: "AAAA-BBBB" })).toEqual({
    name: "A-1/1",
    words: `A-1/1 has changed since this code was printed: its shape was AAAA-BBBB and is ${label.shape}. Make it by what stands here.`,
  });
  expect(pieceOfCode(tickets, { ...label, piece: "Z-9/1" })).toEqual({
    name: "",
    words: "Z-9/1 is no piece of this job.",
  });
});
