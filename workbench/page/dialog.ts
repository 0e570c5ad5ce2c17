/** A button of a dialog: its words and what they stand for. */
export interface Choice<T> {
  words: string;
  value: T;
  main?: boolean;
}

/** Asks with a dialog on the page; null when it is closed without a choice. */
export function ask<T>(
  title: string,
  body: readonly (string | HTMLElement)[],
  choices: readonly Choice<T>[],
): Promise<T | null> {
  const dialog = document.getElementById("dialog") as HTMLDialogElement;
  return new Promise((resolve) => {
    let chosen: T | null = null;
    const choose = (value: T) => () => {
      chosen = value;
      dialog.close();
    };
    const heading = element("h2", title);
    heading.id = "dialog-title";
    dialog.setAttribute("aria-labelledby", heading.id);
    const paragraphs = body.map((part) => (typeof part === "string" ? element("p", part) : part));
    const row = element("div");
    row.className = "row";
    row.append(...choices.map((choice) => button(choice.words, choose(choice.value), choice.main)));
    dialog.replaceChildren(heading, ...paragraphs, row);
    dialog.addEventListener("close", () => resolve(chosen), { once: true });
    dialog.showModal();
  });
}

export function element(tag: string, text = ""): HTMLElement {
  const made = document.createElement(tag);
  made.textContent = text;
  return made;
}

export function button(words: string, onClick: () => void, main = false): HTMLButtonElement {
  const made = element("button", words) as HTMLButtonElement;
  made.type = "button";
  if (main) made.className = "main";
  made.addEventListener("click", onClick);
  return made;
}
