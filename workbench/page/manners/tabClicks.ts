import type { Injector } from "@univerjs/core";
import { ILayoutService } from "@univerjs/preset-sheets-core";

/** After a click on a sheet's tab the keyboard is in the sheet: Ctrl+Z, arrows and typing go there at once. */
export function returnFromTabs(container: HTMLElement, services: Injector): void {
  container.addEventListener("click", ({ target, detail }) => {
    const tab = target instanceof Element ? target.closest("[data-u-comp=slide-tab-item]") : null;
    // A double click renames the sheet.
    if (!tab || detail !== 1 || tab.querySelector("[contenteditable=true]")) return;
    setTimeout(() => {
      if (!tab.querySelector("[contenteditable=true]")) services.get(ILayoutService).focus();
    }, 0);
  });
}
