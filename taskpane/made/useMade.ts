import { useCallback, useEffect, useState } from "react";
import type { TableCells } from "../excel";
import { useLedger } from "../hooks/useLedger";
import { useWorkbook } from "../hooks/useWorkbook";

/** Name of the table of what was made. */
export const MADE = "Made";

/** The Made table as it stands, read again whenever the workbook changes; undefined where there is none. */
export function useMade(): { made: TableCells | undefined; reload(): Promise<void> } {
  const workbook = useWorkbook();
  const { tables } = useLedger();
  const [made, setMade] = useState<TableCells>();
  const reload = useCallback(async () => {
    const [cells] = await workbook.readTables([MADE]);
    setMade((known) => (JSON.stringify(known) === JSON.stringify(cells) ? known : cells));
  }, [workbook]);
  useEffect(() => {
    // A table that cannot be read now is read at the next change.
    void reload().catch(() => undefined);
  }, [reload, tables]);
  return { made, reload };
}
