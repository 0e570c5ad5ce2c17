import { useState } from "react";
import type { Ticket } from "../../src/shop/ticket/ticket";

/** Where one is with a piece: 0 marks the stick, then a bend each, last the check. */
export function useSteps(ticket: Ticket | undefined) {
  const [step, setStep] = useState(0);
  const last = (ticket?.bends.length ?? 0) + 1;
  return {
    step,
    last,
    back: () => setStep(Math.max(0, step - 1)),
    next: () => setStep(Math.min(last, step + 1)),
    begin: () => setStep(0),
  };
}
