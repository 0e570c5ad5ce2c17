import { Radio, RadioGroup } from "@fluentui/react-components";
import type { LengthStyle } from "../../src/units/formatLength";
import { useUnits } from "../hooks/useUnits";
import { strings } from "../strings";

const t = strings.start.units;

/** How lengths are shown; the choice stays in the workbook. */
export function UnitChoice() {
  const units = useUnits();
  return (
    <RadioGroup
      layout="horizontal"
      aria-label={t.title}
      value={units.style}
      onChange={(_, data) => units.setStyle(data.value as LengthStyle)}
    >
      <Radio value="feet" label={t.feet} />
      <Radio value="inches" label={t.inches} />
      <Radio value="mm" label={t.mm} />
    </RadioGroup>
  );
}
