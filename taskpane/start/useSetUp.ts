import { useCallback, useEffect, useState } from "react";
import type { Contents, Names } from "../excel";
import { useCurrency } from "../hooks/useCurrency";
import { useLedger } from "../hooks/useLedger";
import { untilRead } from "../hooks/untilRead";
import { useWorkbook } from "../hooks/useWorkbook";
import { newSheets, type SheetWishes } from "../workbook/design/newSheets";
import { useUnits } from "../hooks/useUnits";
import { ruleRows, type Rows } from "../workbook/design/startRows";
import { EXTRAS, type TableName } from "../workbook/items";
import { plannedNames, plannedSheets, planSetUp, type PlanItem } from "../workbook/plan";

export interface SetUp {
  contents: Contents | undefined;
  names: Names | undefined;
  plan: PlanItem[];
  setPlan(plan: PlanItem[]): void;
  /** Makes what is not there, with or without the sheets a workbook does well without; new tables take the rows given. */
  carryOut(extras: boolean, rows?: SheetWishes["rows"]): Promise<Names | undefined>;
  /** What formulas and looks of new sheets go by. */
  wishes: SheetWishes | undefined;
  look(): Promise<void>;
}

/** Looks at the workbook, plans what is missing, and makes it. */
export function useSetUp(): SetUp {
  const workbook = useWorkbook();
  const ledger = useLedger();
  const { currency } = useCurrency();
  const { style } = useUnits();
  const [found, setFound] = useState<{ contents: Contents; names: Names; plan: PlanItem[] }>();

  const [tries, setTries] = useState(0);

  const read = useCallback(async () => {
    const [contents, names] = [await workbook.readContents(), await workbook.readNames()];
    return { contents, names, plan: planSetUp(contents, names) };
  }, [workbook]);
  const look = async () => setFound(await read());

  // Whatever changes in the workbook shows in the ledger first; a view opened anew looks again.
  useEffect(() => untilRead(read, setFound), [read, ledger.tables, tries]);

  const wishes = found && { ...plannedSheets(found.contents, found.names, found.plan), currency };

  const carryOut = async (extras: boolean, rows: Partial<Record<TableName, Rows>> = {}) => {
    if (!found || !wishes) return undefined;
    const missing = found.plan.filter(({ item, there }) => !there && (extras || !EXTRAS.includes(item)));
    const names = plannedNames(missing, found.names);
    if (missing.length === 0) return names;
    const items = missing.map(({ item }) => item);
    try {
      await workbook.setUp(newSheets(items, { ...wishes, rows: { Rules: ruleRows(style), ...rows } }), {
        leftOver: found.contents.blank,
        settings: workbook.namesSetting(names),
      });
    } catch (error) {
      // What was seen while it was being made is gone again.
      await ledger.reload();
      setTries((before) => before + 1);
      throw error;
    }
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
    wishes,
    look,
  };
}
