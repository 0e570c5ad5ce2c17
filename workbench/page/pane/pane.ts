import { ILayoutService } from "@univerjs/preset-sheets-core";
import type { Book } from "../../engine";
import { officeFor } from "../../office";
import { openPaneFrame } from "./paneFrame";
import { goAround } from "./parts";

/**
 * Shows and hides the area at the right; the pane is made when it is shown first.
 * @returns the way to show it that leaves the keyboard where it is
 */
export function startPane(toggle: HTMLButtonElement, area: HTMLElement, book: Book): () => Promise<void> {
  // Made at once, pane or not: what the pane keeps in the workbook must be there when the workbook is saved.
  const globals = officeFor(book);
  const bar = toggle.parentElement!;
  let frame: HTMLIFrameElement | null = null;
  let opening: Promise<void> | undefined;

  const listenIn = goAround([
    {
      isThere: () => true,
      hasFocus: () => document.activeElement !== frame && !bar.contains(document.activeElement),
      enter: () => book.services.get(ILayoutService).focus(),
    },
    {
      isThere: () => !area.hidden && frame !== null,
      hasFocus: () => document.activeElement === frame,
      enter: () => frame?.contentWindow?.focus(),
    },
    {
      isThere: () => true,
      hasFocus: () => bar.contains(document.activeElement),
      enter: () => toggle.focus(),
    },
  ]);

  const open = async () => {
    frame = await openPaneFrame(area, globals);
    if (frame) listenIn(frame.contentWindow!);
  };

  const show = async (shown: boolean) => {
    area.hidden = !shown;
    toggle.setAttribute("aria-pressed", String(shown));
    if (shown) await (opening ??= open());
  };
  toggle.addEventListener("click", async () => {
    await show(area.hidden !== false);
    if (!area.hidden) frame?.contentWindow?.focus();
  });
  toggle.disabled = false;
  return () => show(true);
}
