import { act, screen, waitFor } from "@testing-library/react";
import { showSetUp } from "./support/showPane";

const ROUTE = 5;

/** Holds back every answer of the workbook until it is let go. */
function holdAnswers() {
  const held: (() => void)[] = [];
  const { run } = Excel as unknown as { run: (...given: unknown[]) => Promise<unknown> };
  let holding = true;
  Object.assign(Excel, {
    run: async (...given: unknown[]) => {
      const answer = await run(...given);
      if (holding) await new Promise<void>((resolve) => held.push(resolve));
      return answer;
    },
  });
  const next = async () => {
    await waitFor(() => expect(held.length).toBeGreaterThan(0));
    await act(async () => held.shift()?.());
  };
  const all = async () => {
    holding = false;
    await act(async () => held.splice(0).forEach((resolve) => resolve()));
  };
  return { next, all };
}

/** A run of two steps in the pane, and a way to write one of them. */
async function openRun() {
  const { book, user } = await showSetUp();
  const sheet = book.sheet("Runs");
  ["P-1", "", "", "EMT", "1/2", "up 4', east 12'", 1].forEach((cell, column) => sheet.put(1, column, cell));
  await act(async () => book.type(sheet, 1, 0, "P-1"));
  await user.click(screen.getByRole("tab", { name: "A run" }));
  const field = (name: string) => screen.findByRole<HTMLInputElement>("textbox", { name });
  const write = async (name: string, words: string) => {
    await user.clear(await field(name));
    await user.type(await field(name), `${words}{Enter}`);
  };
  await field("Step 2");
  return { user, sheet, field, write };
}

test("what was typed stays when the workbook's answer to the step before comes late", async () => {
  const { user, sheet, field, write } = await openRun();
  const answers = holdAnswers();
  await write("Step 1", "up 7'");
  await answers.next();
  await answers.next();
  // The route with the first step has been read by now; before it is told, the next step is written.
  await write("Step 2", "east 9'");
  await answers.next();
  expect((await field("Step 2")).value).toBe("east 9'");
  await answers.all();
  await user.tab();
  await waitFor(() => expect(sheet.at(1, ROUTE)).toBe("up 7', east 9'"));
  expect((await field("Step 2")).value).toBe("east 9'");
});

test("a step written before the workbook has answered to the step before is written too", async () => {
  const { sheet, write } = await openRun();
  const answers = holdAnswers();
  await write("Step 1", "up 7'");
  await write("Step 2", "east 9'");
  await answers.all();
  await waitFor(() => expect(sheet.at(1, ROUTE)).toBe("up 7', east 9'"));
});
