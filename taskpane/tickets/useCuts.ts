import { useEffect, useRef, useState } from "react";
import type { TableCells } from "../excel";
import { useLedger } from "../hooks/useLedger";
import { cutJob } from "../totals/cuts/cutJob";
import type { CutResult } from "../totals/cuts/cutWork";
import { planInWorker, type Planning } from "../totals/cuts/planInWorker";

/**
 * The cutting plan of some rows of Runs, for the sheet behind their tickets; undefined from `plan` when the person
 * cancels it.
 *
 * @param made the Made table, where what is made is not cut again
 */
export function useCuts(rows: readonly number[], made: TableCells | undefined) {
  const { tables } = useLedger();
  const planning = useRef<Planning | undefined>(undefined);
  const giveUp = useRef<() => void>(() => undefined);
  /** What is being planned; undefined while nothing is. */
  const [title, setTitle] = useState<string>();
  useEffect(() => () => planning.current?.cancel(), []);

  const plan = async (): Promise<CutResult | undefined> => {
    const whole = cutJob(tables);
    if (!whole) return undefined;
    const given = { ...whole, rows, ...(made && { made: made.cells }) };
    setTitle("");
    const canceled = new Promise<undefined>((resolve) => (giveUp.current = () => resolve(undefined)));
    try {
      planning.current = planInWorker(given, (soFar) => setTitle(soFar.title));
      return await Promise.race([planning.current.result, canceled]);
    } finally {
      setTitle(undefined);
    }
  };
  const cancel = () => {
    planning.current?.cancel();
    giveUp.current();
  };
  return { title, plan, cancel };
}
