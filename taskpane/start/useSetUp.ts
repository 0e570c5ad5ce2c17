import { useCallback, useEffect, useState } from "react";
import type { Contents, Names } from "../excel";
import { useCurrency } from "../hooks/useCurrency";
import { useLedger } from "../hooks/useLedger";
import { untilRead } from "../hooks/untilRead";
import { useWorkbook } from "../hooks/useWorkbook";
import { strings } from "../strings";
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

interface Found {
  contents: Contents;
  names: Names;
  plan: PlanItem[];
}

/** A plan with the names that the person has chosen for sheets to make. */
const withNames = (plan: readonly PlanItem[], chosen: readonly PlanItem[]): PlanItem[] =>
  plan.map((each) => {
    const before = chosen.find(({ item }) => item === each.item);
    return before?.taken && each.taken ? { ...each, sheet: before.sheet } : each;
  });

/** Looks at the workbook, plans what is missing, and makes it. */
export function useSetUp(): SetUp {
  const workbook = useWorkbook();
  const ledger = useLedger();
  const { currency } = useCurrency();
  const { style } = useUnits();
  const [found, setFound] = useState<Found>();

  const [tries, setTries] = useState(0);

  const read = useCallback(async () => {
    const contents = await workbook.readContents();
    const begun = await workbook.readBegun();
    const half = begun.sheets.filter((name) => contents.sheets.includes(name));
    const names = { ...(await workbook.readNames()), ...(half.length > 0 ? workbook.namesIn(begun.settings) : {}) };
    return { contents, names, plan: planSetUp(contents, names, half) };
  }, [workbook]);
  const look = async () => setFound(await read());

  // Whatever changes in the workbook shows in the ledger first; a view opened anew looks again.
  useEffect(() => untilRead(read, setFound), [read, ledger.tables, tries]);

  const wishesOf = ({ contents, names, plan }: Found) => ({ ...plannedSheets(contents, names, plan), currency });
  const wishes = found && wishesOf(found);

  const carryOut = async (extras: boolean, rows: Partial<Record<TableName, Rows>> = {}) => {
    if (!found) return undefined;
    // What was seen may be out of date: half of a set-up that broke and is taken away again, for one.
    const now = await read().catch((error: Error) => {
      throw new Error(`${error.message} ${strings.excel.untouched}`);
    });
    const seen = { ...now, plan: withNames(now.plan, found.plan) };
    const missing = seen.plan.filter(({ item, there, begun }) => !there && (extras || begun || !EXTRAS.includes(item)));
    const names = plannedNames(missing, seen.names);
    if (missing.length === 0) return names;
    const items = missing.map(({ item }) => item);
    try {
      await workbook.setUp(newSheets(items, { ...wishesOf(seen), rows: { Rules: ruleRows(style), ...rows } }), {
        leftOver: seen.contents.blank,
        settings: workbook.namesSetting(names),
        begun: missing.flatMap(({ sheet, begun }) => (begun ? [sheet] : [])),
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
