import { screen, waitFor } from "@testing-library/react";
import { showSetUp } from "./support/showPane";

test("the first run of a workbook is not made after the headings above it", async () => {
  const { book, user } = await showSetUp();
  await user.click(screen.getByRole("tab", { name: "A run" }));
  await user.click(await screen.findByRole("button", { name: "Add a run" }));
  await waitFor(() => expect(book.cellsOf("Runs")[1]?.slice(0, 7)).toEqual(["Run 1", "", "", "EMT", "1/2", "", 1]));
});
