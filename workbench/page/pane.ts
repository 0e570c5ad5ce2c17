import { ILayoutService } from "@univerjs/preset-sheets-core";
import type { Book } from "../engine";
import { officeFor } from "../office";
import { openPaneFrame } from "./paneFrame";

/** The key that goes back and forth between grid and pane, as between the parts of an Office window. */
const otherPart = "F6";

/** Shows and hides the area at the right; the pane is made when it is shown first. */
export function startPane(toggle: HTMLButtonElement, area: HTMLElement, book: Book): void {
  // Made at once, pane or not: what the pane keeps in the workbook must be there when the workbook is saved.
  const globals = officeFor(book);
  let frame: Promise<HTMLIFrameElement | null> | undefined;

  const toPane = async () => (await frame)?.contentWindow?.focus();
  const toGrid = () => book.services.get(ILayoutService).focus();

  const make = async () => {
    const made = await openPaneFrame(area, globals);
    onOtherPart(made?.contentWindow, toGrid);
    return made;
  };
  toggle.addEventListener("click", () => {
    area.hidden = !area.hidden;
    toggle.setAttribute("aria-pressed", String(!area.hidden));
    if (area.hidden) return;
    frame ??= make();
    void toPane();
  });
  onOtherPart(window, () => {
    if (!area.hidden) void toPane();
  });
}

function onOtherPart(target: Window | null | undefined, go: () => void): void {
  target?.addEventListener("keydown", (event) => {
    if (event.key !== otherPart || event.ctrlKey || event.altKey || event.metaKey) return;
    event.preventDefault();
    go();
  });
}
