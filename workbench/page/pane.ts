import type { Book } from "../engine";

/** Shows and hides the area at the right; the pane is made when it is shown first. */
export function startPane(toggle: HTMLButtonElement, area: HTMLElement, book: Book): void {
  let made = false;
  toggle.addEventListener("click", () => {
    area.hidden = !area.hidden;
    toggle.setAttribute("aria-pressed", String(!area.hidden));
    if (!area.hidden && !made) {
      made = true;
      makePane(area, book);
    }
  });
}

function makePane(area: HTMLElement, _book: Book): void {
  const frame = document.createElement("iframe");
  frame.title = "Ledger pane";
  frame.src = "../taskpane.html";
  area.append(frame);
}
