import { createContext, useCallback, useContext, useEffect, useMemo, useState, type ReactNode } from "react";
import { formatLength, type LengthStyle } from "../../src/units/formatLength";
import { namedTables } from "../workbook/namedTables";
import { unitOfRules, writeUnitRule } from "../workbook/unitRule";
import { untilRead } from "./untilRead";
import { useLedger } from "./useLedger";
import { useWorkbook } from "./useWorkbook";

const KEY = "raceway-ledger.units";
const STYLES: readonly LengthStyle[] = ["feet", "inches", "mm"];

export interface Units {
  style: LengthStyle;
  setStyle(style: LengthStyle): Promise<void>;
  /** A length as this workbook's people read it, to the nearest 1/16 in. or millimeter. */
  show(inches: number): string;
  /** What a person typed, as the readers in src/ take it: a bare number means the chosen unit. */
  typed(text: string): string;
}

const UnitsContext = createContext<Units | undefined>(undefined);

/**
 * The unit of the workbook: what its Rules say, so that sheets and pane tell lengths alike. Where they say nothing, and
 * before there are any, it is what was chosen here, kept in the workbook's settings.
 */
export function UnitsProvider({ children }: { children: ReactNode }) {
  const workbook = useWorkbook();
  const { tables, names, reload, mustBeFresh } = useLedger();
  const [chosen, setChosen] = useState<LengthStyle>("feet");
  const rules = tables.Rules;
  const style = useMemo(() => unitOfRules(rules), [rules]) ?? chosen;
  useEffect(
    () =>
      untilRead(
        () => workbook.readSettings([KEY]),
        ([stored]) => setChosen(STYLES.find((known) => known === stored) ?? "feet"),
      ),
    [workbook],
  );
  const setStyle = useCallback(
    async (next: LengthStyle) => {
      setChosen(next);
      void workbook.writeSettings({ [KEY]: next }).catch(() => undefined);
      if (!rules) return;
      mustBeFresh();
      await writeUnitRule(workbook, rules, namedTables(names, tables), next);
      await reload();
    },
    [workbook, rules, names, tables, reload, mustBeFresh],
  );
  const units = useMemo(
    () => ({
      style,
      setStyle,
      show: (inches: number) => formatLength(inches, 16, style),
      typed: (text: string) => (style === "mm" && /^\s*[-+]?[\d.]+\s*$/.test(text) ? `${text.trim()} mm` : text),
    }),
    [style, setStyle],
  );
  return <UnitsContext.Provider value={units}>{children}</UnitsContext.Provider>;
}

export function useUnits(): Units {
  const units = useContext(UnitsContext);
  if (!units) throw new Error("useUnits needs a UnitsProvider above it");
  return units;
}
