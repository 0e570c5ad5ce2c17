import { useLedger } from "../../hooks/useLedger";
import { useWorkbook } from "../../hooks/useWorkbook";
import { strings } from "../../strings";
import type { StockWork } from "./cutWork";
import { OneStep } from "./OneStep";

const t = strings.totals.cuts.stock;

/** Writes into Stock what is on hand once a plan is cut. */
export function DropsToStock({ after, isStale }: { after: StockWork; isStale: boolean }) {
  const workbook = useWorkbook();
  const { Stock } = useLedger().tables;
  const offered = after.drops + after.used > 0;
  if (!Stock) return offered && <p className="rl-hint">{t.noTable}</p>;
  return (
    <OneStep
      name="totals.cuts.stock"
      words={{ ...t, about: t.about(after.drops, after.used) }}
      offered={offered}
      isStale={isStale}
      write={async () => ({ replaced: await workbook.changeRows(Stock, after.edits), seen: [] })}
    />
  );
}
