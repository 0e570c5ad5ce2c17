import { createContext, useCallback, useContext, useEffect, useMemo, useState, type ReactNode } from "react";
import { formatLength, type LengthStyle } from "../../src/units/formatLength";
import { untilRead } from "./untilRead";
import { useWorkbook } from "./useWorkbook";

const KEY = "raceway-ledger.units";
const STYLES: readonly LengthStyle[] = ["feet", "inches", "mm"];

export interface Units {
  style: LengthStyle;
  setStyle(style: LengthStyle): void;
  /** A length as this workbook's people read it, to the nearest 1/16 in. or millimeter. */
  show(inches: number): string;
  /** What a person typed, as the readers in src/ take it: a bare number means the chosen unit. */
  typed(text: string): string;
}

const UnitsContext = createContext<Units | undefined>(undefined);

/** Keeps the chosen unit in the workbook's settings, not on the machine. */
export function UnitsProvider({ children }: { children: ReactNode }) {
  const workbook = useWorkbook();
  const [style, setLocal] = useState<LengthStyle>("feet");
  useEffect(
    () =>
      untilRead(
        () => workbook.readSettings([KEY]),
        ([stored]) => setLocal(STYLES.find((known) => known === stored) ?? "feet"),
      ),
    [workbook],
  );
  const setStyle = useCallback(
    (next: LengthStyle) => {
      setLocal(next);
      void workbook.writeSettings({ [KEY]: next }).catch(() => undefined);
    },
    [workbook],
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
