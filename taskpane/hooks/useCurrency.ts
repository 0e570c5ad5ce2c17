import { useCallback, useEffect, useState } from "react";
import { CURRENCY } from "../workbook/design/look";
import { untilRead } from "./untilRead";
import { useWorkbook } from "./useWorkbook";

const KEY = "raceway-ledger.currency";

/** What prices of this workbook are in, kept in the workbook's settings. */
export function useCurrency(): { currency: string; setCurrency(currency: string): void } {
  const workbook = useWorkbook();
  const [currency, setLocal] = useState<string>(CURRENCY);
  useEffect(
    () =>
      untilRead(
        () => workbook.readSettings([KEY]),
        ([stored]) => typeof stored === "string" && setLocal(stored),
      ),
    [workbook],
  );
  const setCurrency = useCallback(
    (next: string) => {
      setLocal(next);
      void workbook.writeSettings({ [KEY]: next.trim() }).catch(() => undefined);
    },
    [workbook],
  );
  return { currency, setCurrency };
}
