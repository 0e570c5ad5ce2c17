import { button, element } from "../dialog";
import { jobForm } from "./jobForm";
import type { JobWishes } from "./jobWishes";
import { words } from "./words";

/** What somebody wants who has nothing here yet. */
export type FirstChoice = { kind: "own"; wishes: JobWishes } | { kind: "demo" } | { kind: "empty" };

/** The first screen, in the grid's place: a job of one's own before anything else. Resolves with the choice. */
export function askFirst(place: HTMLElement): Promise<FirstChoice> {
  return new Promise((resolve) => {
    const screen = element("section");
    screen.className = "first";
    screen.setAttribute("aria-labelledby", "first-title");
    const choose = (choice: FirstChoice) => {
      screen.remove();
      resolve(choice);
    };
    const form = document.createElement("form");
    const { fields, first, wishes } = jobForm();
    const start = button(words.start, () => undefined, true);
    start.type = "submit";
    form.addEventListener("submit", (event) => {
      event.preventDefault();
      choose({ kind: "own", wishes: wishes() });
    });
    const row = element("div");
    row.className = "row";
    row.append(
      start,
      button(words.demo, () => choose({ kind: "demo" })),
      button(words.empty, () => choose({ kind: "empty" })),
    );
    const title = element("h1", words.title);
    title.id = "first-title";
    form.append(title, element("p", words.about), fields, row);
    screen.append(form);
    place.append(screen);
    first.focus();
  });
}
