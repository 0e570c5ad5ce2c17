import { ask } from "../dialog";
import { words } from "./words";

/** Long enough to read a short line [ms], and to read a letter of a long one. */
const readable = 6000;
const aLetter = 80;

let turn = 0;

/** Says what goes on, with a bar that moves, while `work` is at it. */
export async function busy<T>(text: string, work: () => Promise<T>): Promise<T> {
  const mine = show(text, true);
  // Reading and writing hold the page up, so the words must be on the screen before.
  await painted();
  try {
    return await work();
  } finally {
    if (turn === mine) show("", false);
  }
}

/** Says what was done, for a while. */
export function tell(text: string): void {
  const mine = show(text, false);
  setTimeout(
    () => {
      if (turn === mine) show("", false);
    },
    Math.max(readable, text.length * aLetter),
  );
}

function show(text: string, working: boolean): number {
  const place = document.getElementById("told")!;
  place.replaceChildren(...(working ? [document.createElement("progress")] : []), text);
  place.querySelector("progress")?.setAttribute("aria-label", text);
  return (turn += 1);
}

function painted(): Promise<void> {
  // A tab in the background paints nothing, but does its work all the same.
  const soon = new Promise<void>((resolve) => setTimeout(resolve, 100));
  const frame = new Promise<void>((resolve) => requestAnimationFrame(() => setTimeout(resolve, 0)));
  return Promise.race([soon, frame]);
}

/** Says something that has to be read, in a dialog. */
export async function inform(title: string, ...lines: string[]): Promise<void> {
  await ask(title, lines, [{ words: words.close, value: true, main: true }]);
}

export const reasonOf = (error: unknown): string => (error instanceof Error ? error.message : String(error));
