import { useCallback, useEffect, useState } from "react";
import type { Contents, Names } from "../excel";
import { useLedger } from "../hooks/useLedger";
import { useWorkbook } from "../hooks/useWorkbook";
import type { ResultName } from "../workbook/items";
import { newResult, newTable, type Rows } from "../workbook/newTables";
import { isTable, plannedNames, planSetUp, type PlanItem } from "../workbook/plan";

export interface SetUp {
  contents: Contents | undefined;
  names: Names | undefined;
  plan: PlanItem[];
  setPlan(plan: PlanItem[]): void;
  /** Makes what is not there; `runs` are rows for a new Runs table. */
  carryOut(runs?: Rows): Promise<void>;
  look(): Promise<void>;
}

/** Looks at the workbook, plans what is missing, and makes it. */
export function useSetUp(): SetUp {
  const workbook = useWorkbook();
  const ledger = useLedger();
  const [found, setFound] = useState<{ contents: Contents; names: Names; plan: PlanItem[] }>();

  const look = useCallback(async () => {
    const [contents, names] = [await workbook.readContents(), await workbook.readNames()];
    setFound({ contents, names, plan: planSetUp(contents, names) });
  }, [workbook]);

  // Whatever changes in the workbook shows in the ledger first; a view opened anew looks again.
  useEffect(() => {
    void look().catch(() => undefined);
  }, [look, ledger.tables]);

  const carryOut = async (runs: Rows = []) => {
    if (!found) return;
    const names = plannedNames(found.plan, found.names);
    const missing = found.plan.filter(({ there }) => !there);
    await workbook.writeNames(names);
    await workbook.setUp(
      missing.flatMap(({ item, sheet }) =>
        isTable(item) ? [newTable(item, sheet.trim(), names, item === "Runs" ? runs : undefined)] : [],
      ),
      missing.flatMap(({ item, sheet }) => (isTable(item) ? [] : [newResult(item as ResultName, sheet.trim(), names)])),
    );
    await ledger.reload();
    await look();
  };

  return {
    contents: found?.contents,
    names: found?.names,
    plan: found?.plan ?? [],
    setPlan: (plan) => setFound((before) => before && { ...before, plan }),
    carryOut,
    look,
  };
}
