import { Button } from "@fluentui/react-components";
import { useLedger } from "../hooks/useLedger";
import { strings } from "../strings";
import { Notice } from "./Notice";

const t = strings.behind;

/** Says in every view that what it shows is older than the sheet, or that the workbook was never read. */
export function Behind() {
  const { state, behind, reload } = useLedger();
  if (behind === "") return null;
  const isOld = state === "ready";
  return (
    <Notice
      intent={state === "failed" ? "error" : "warning"}
      title={isOld ? t.title : state === "failed" ? strings.common.notRead : strings.common.reading}
      actions={
        <Button size="small" onClick={() => void reload()}>
          {strings.common.again}
        </Button>
      }
    >
      {isOld ? `${behind} ${t.older}` : behind}
    </Notice>
  );
}
