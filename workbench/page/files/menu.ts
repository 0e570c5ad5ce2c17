/** An entry of a menu; null draws a line between groups. */
export type MenuEntry = { words: string; run: () => void } | null;

/**
 * A menu under a button, by the usual keys of one: Enter, Space or an arrow opens it, arrows, Home, End and first letters
 * go through it, Escape and Tab close it.
 */
export function startMenu(opener: HTMLButtonElement, list: HTMLElement, entries: readonly MenuEntry[]): void {
  const items = entries.flatMap((entry) => (entry ? [itemOf(entry, () => close(true))] : []));
  const left = [...items];
  list.replaceChildren(...entries.map((entry) => (entry ? left.shift()! : line())));

  const open = (at: number) => {
    list.hidden = false;
    keepInPage(list);
    opener.setAttribute("aria-expanded", "true");
    items.at(at)!.focus();
  };
  const close = (back: boolean) => {
    list.hidden = true;
    opener.setAttribute("aria-expanded", "false");
    if (back) opener.focus();
  };

  opener.addEventListener("click", () => (list.hidden ? open(0) : close(true)));
  opener.addEventListener("keydown", (event) => {
    if (event.key !== "ArrowDown" && event.key !== "ArrowUp") return;
    event.preventDefault();
    open(event.key === "ArrowDown" ? 0 : -1);
  });
  list.addEventListener("keydown", (event) => {
    if (event.key === "Escape") close(true);
    const to = target(event.key, items, items.indexOf(document.activeElement as HTMLButtonElement));
    if (to) to.focus();
    if (to || event.key === "Escape") event.preventDefault();
  });
  list.parentElement!.addEventListener("focusout", ({ relatedTarget }) => {
    const inside = relatedTarget instanceof Node && list.parentElement!.contains(relatedTarget);
    if (!inside && !list.hidden) close(false);
  });
  opener.disabled = false;
}

/** Space between the menu and the edge of the page [px]. */
const margin = 8;

/** Under the right end of its button, but not beyond the page's left edge. */
function keepInPage(list: HTMLElement): void {
  list.style.right = "0";
  list.style.right = `${Math.min(0, list.getBoundingClientRect().left - margin)}px`;
}

function target(key: string, items: readonly HTMLButtonElement[], at: number): HTMLButtonElement | undefined {
  if (key === "ArrowDown") return items[(at + 1) % items.length];
  if (key === "ArrowUp") return items.at(at - 1);
  if (key === "Home") return items[0];
  if (key === "End") return items.at(-1);
  if (key.length !== 1) return undefined;
  const from = [...items.slice(at + 1), ...items.slice(0, at + 1)];
  return from.find((item) => item.textContent.toLowerCase().startsWith(key.toLowerCase()));
}

function itemOf({ words, run }: { words: string; run: () => void }, close: () => void): HTMLButtonElement {
  const item = document.createElement("button");
  item.type = "button";
  item.setAttribute("role", "menuitem");
  item.tabIndex = -1;
  item.textContent = words;
  item.addEventListener("click", () => {
    close();
    run();
  });
  return item;
}

function line(): HTMLElement {
  const made = document.createElement("hr");
  made.setAttribute("role", "separator");
  return made;
}
