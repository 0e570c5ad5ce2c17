import type { Outcome } from "./outcome";
import { benderStrings as t } from "./benderStrings";

/** What was typed for a bend. */
export interface Reading {
  readonly dial: string;
  readonly angle: string;
}

/** Highest reading of a dial and of an angle that Made takes [°]. */
const MOST = { dial: 270, angle: 200 };

/** Dial and angle of a bend, for who measured them. */
export function Measured({ reading, onChange }: { reading: Reading; onChange(reading: Reading): void }) {
  const field = (name: keyof Reading, label: string) => (
    <label className="rlb-field">
      {label}
      <input
        inputMode="decimal"
        autoComplete="off"
        value={reading[name]}
        onChange={(event) => onChange({ ...reading, [name]: event.target.value })}
      />
    </label>
  );
  return (
    <details className="rlb-measured">
      <summary>{t.measure}</summary>
      {field("dial", t.dialReached)}
      {field("angle", t.angleMeasured)}
    </details>
  );
}

/** The bends that were measured; undefined where one of two is missing or is no angle. */
export function readings(typed: Readonly<Record<number, Reading>>): Outcome["measured"] | undefined {
  const found = Object.entries(typed).flatMap(([bend, { dial, angle }]) =>
    dial.trim() + angle.trim() === "" ? [] : [{ bend: Number(bend), dial: degrees(dial), angle: degrees(angle) }],
  );
  const isFine = found.every(({ dial, angle }) => dial > 0 && dial <= MOST.dial && angle > 0 && angle <= MOST.angle);
  return isFine ? found : undefined;
}

/** A number as it is written at the bender, with a comma or a point and with or without its sign; NaN for none. */
const degrees = (text: string): number => {
  const plain = text.trim().replace(/°$/, "").replace(",", ".");
  return plain === "" ? NaN : Number(plain);
};
