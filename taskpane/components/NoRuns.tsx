import { Button } from "@fluentui/react-components";
import { useLedger } from "../hooks/useLedger";
import { strings } from "../strings";
import { Notice } from "./Notice";

/** Shown in place of a view that needs the Runs table: says so, and leads to where one is set up. */
export function NoRuns({ toStart }: { toStart(): void }) {
  const { state } = useLedger();
  // Said above every view.
  if (state === "failed") return null;
  return (
    <Notice
      actions={
        <Button size="small" appearance="primary" onClick={toStart}>
          {strings.common.toStart}
        </Button>
      }
    >
      {strings.common.noRuns}
    </Notice>
  );
}
