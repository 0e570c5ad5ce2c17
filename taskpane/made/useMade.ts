import type { TableCells } from "../excel";
import { useLedger } from "../hooks/useLedger";

/** The Made table as it stands; undefined where there is none. */
export function useMade(): { made: TableCells | undefined; reload(): Promise<void> } {
  const { tables, reload } = useLedger();
  return { made: tables.Made, reload };
}
