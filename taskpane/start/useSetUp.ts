import { useCallback, useEffect, useState } from "react";
import type { Contents, Names } from "../excel";
import { useLedger } from "../hooks/useLedger";
import { useWorkbook } from "../hooks/useWorkbook";
import type { ResultName, TableName } from "../workbook/items";
import { newResult, newTable, type Rows } from "../workbook/newTables";
import { isTable, plannedNames, planSetUp, type PlanItem } from "../workbook/plan";

export interface SetUp {
  contents: Contents | undefined;
  names: Names | undefined;
  plan: PlanItem[];
  setPlan(plan: PlanItem[]): void;
  /** Makes what is not there; new tables take the rows given for them. Answers the names in use from then on. */
  carryOut(rows?: Partial<Record<TableName, Rows>>): Promise<Names | undefined>;
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

  const carryOut = async (rows: Partial<Record<TableName, Rows>> = {}) => {
    if (!found) return undefined;
    const names = plannedNames(found.plan, found.names);
    const missing = found.plan.filter(({ there }) => !there);
    if (missing.length === 0) return names;
    await workbook.writeNames(names);
    await workbook.setUp(
      missing.flatMap(({ item, sheet }) => (isTable(item) ? [newTable(item, sheet.trim(), names, rows[item])] : [])),
      missing.flatMap(({ item, sheet }) => (isTable(item) ? [] : [newResult(item as ResultName, sheet.trim(), names)])),
    );
    await ledger.reload();
    await look();
    return names;
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
