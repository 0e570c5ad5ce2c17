/** A part of the page that the keyboard can be in. */
export interface Part {
  isThere(): boolean;
  hasFocus(): boolean;
  enter(): void;
}

/** The key that goes from part to part, as in an Office window; with Shift the other way round. */
const nextPart = "F6";

/**
 * Goes around the parts with F6. In the grid Tab goes from cell to cell, so it leads nowhere else.
 *
 * @returns the way to listen in another document too, such as a frame's
 */
export function goAround(parts: readonly Part[]): (target: Window) => void {
  const listen = (target: Window) =>
    target.addEventListener(
      "keydown",
      (event) => {
        if (event.key !== nextPart || event.ctrlKey || event.altKey || event.metaKey) return;
        event.preventDefault();
        event.stopPropagation();
        const there = parts.filter((part) => part.isThere());
        const at = there.findIndex((part) => part.hasFocus());
        there[(at + (event.shiftKey ? -1 : 1) + there.length) % there.length]!.enter();
      },
      true,
    );
  listen(window);
  return listen;
}
