import { act, render } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { App } from "../../../taskpane/App";
import type { FakeBook } from "./fakeBook";
import { useFakeExcel } from "./fakeExcel";

/** Shows the pane over a fake workbook. */
export async function showPane(book?: FakeBook) {
  const workbook = useFakeExcel(book);
  const user = userEvent.setup();
  const page = render(<App />);
  await act(async () => undefined);
  return { book: workbook, user, page };
}
