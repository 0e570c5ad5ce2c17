import { useCallback, useState } from "react";

/** One thing asked of the workbook at a time: whether it is under way, and the words when it failed. */
export function useTask(): { busy: boolean; problem: string; run(task: () => Promise<void>): Promise<void> } {
  const [busy, setBusy] = useState(false);
  const [problem, setProblem] = useState("");
  const run = useCallback(async (task: () => Promise<void>) => {
    setBusy(true);
    setProblem("");
    try {
      await task();
    } catch (error) {
      setProblem(error instanceof Error ? error.message : String(error));
    } finally {
      setBusy(false);
    }
  }, []);
  return { busy, problem, run };
}
