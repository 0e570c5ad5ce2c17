import type { Calculation } from "../engine";
import { busy } from "./files/telling";
import { words } from "./files/words";

/** Shorter than this, words would only flicker [ms]. */
const noticed = 500;

/** Says that formulas are being worked out, when it takes long enough to be noticed. The grid can be used meanwhile. */
export function tellProgress(calculation: Calculation): void {
  let timer: ReturnType<typeof setTimeout> | undefined;
  const begin = () => {
    clearTimeout(timer);
    timer = setTimeout(() => {
      if (calculation.busy) void busy(words.calculating, () => calculation.settled());
    }, noticed);
  };
  calculation.onStarted(begin);
  if (calculation.busy) begin();
}
