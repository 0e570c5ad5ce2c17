import { ILayoutService } from "@univerjs/preset-sheets-core";
import { ASKED, type AskedWindow } from "../../../taskpane/hooks/asked";
import type { Book } from "../../engine";
import { officeFor } from "../../office";
import { openPaneFrame } from "./paneFrame";
import { goAround } from "./parts";

export interface Pane {
  /** Shows it and leaves the keyboard where it is. */
  show(): Promise<void>;
  /** Shows it where it reads drawings, and goes there. */
  showDrawings(): Promise<void>;
}

/** Shows and hides the area at the right; the pane is made when it is shown first. */
export function startPane(toggle: HTMLButtonElement, area: HTMLElement, book: Book): Pane {
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
  return {
    show: () => show(true),
    showDrawings: async () => {
      await show(true);
      const inside = frame?.contentWindow as AskedWindow | undefined;
      if (!inside) return;
      inside.ledgerDrawingAsked = (inside.ledgerDrawingAsked ?? 0) + 1;
      inside.dispatchEvent(new Event(ASKED));
      inside.focus();
    },
  };
}
