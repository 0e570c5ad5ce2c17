import { Button } from "@fluentui/react-components";
import { Notice } from "../../components/Notice";
import { useTask } from "../../hooks/useTask";
import type { Replaced, Seen } from "../../excel";
import { useKept } from "../../hooks/useKept";
import { useLedger } from "../../hooks/useLedger";
import { useWorkbook } from "../../hooks/useWorkbook";
import { strings } from "../../strings";

/** What was written, and the cells by which its place is known again. */
export interface Written {
  replaced: Replaced[];
  seen: Seen[];
}

/** A button that writes into the workbook in one step; then what was done, with the way to take it back in one step. */
export function OneStep({
  name,
  words,
  offered,
  isStale,
  write,
}: {
  /** What its state is kept under. */
  name: string;
  words: { about?: string; button: string; done: string };
  /** There is something to write. */
  offered: boolean;
  /** What would be written rests on what stood in the workbook before. */
  isStale: boolean;
  write(): Promise<Written>;
}) {
  const workbook = useWorkbook();
  const { reload } = useLedger();
  const task = useTask();
  const [written, setWritten] = useKept<Written | undefined>(name, undefined);
  const apply = async () => {
    try {
      setWritten(await write());
    } finally {
      await reload();
    }
  };
  const takeBack = async ({ replaced, seen }: Written) => {
    await workbook.putBack(replaced, seen);
    setWritten(undefined);
    await reload();
  };
  return (
    <div className="rl-stack">
      {offered && !(written && isStale) && (
        <>
          {words.about && <p className="rl-hint">{words.about}</p>}
          <Button disabledFocusable={task.busy || isStale} onClick={() => void task.run(apply)}>
            {words.button}
          </Button>
        </>
      )}
      {task.problem && <Notice intent="error">{task.problem}</Notice>}
      {written && (
        <Notice
          intent="success"
          actions={
            <Button size="small" onClick={() => void task.run(() => takeBack(written))}>
              {strings.bend.put.takeBack}
            </Button>
          }
        >
          {words.done}
        </Notice>
      )}
    </div>
  );
}
