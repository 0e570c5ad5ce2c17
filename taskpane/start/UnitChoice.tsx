import { Radio, RadioGroup } from "@fluentui/react-components";
import type { LengthStyle } from "../../src/units/formatLength";
import { Notice } from "../components/Notice";
import { useTask } from "../hooks/useTask";
import { useUnits } from "../hooks/useUnits";
import { strings } from "../strings";

const t = strings.start.units;

/** How lengths are shown, in the pane and in messages and texts of the sheets; the choice stays in the workbook. */
export function UnitChoice() {
  const units = useUnits();
  const task = useTask();
  return (
    <>
      <RadioGroup
        layout="horizontal"
        aria-label={t.title}
        value={units.style}
        onChange={(_, data) => void task.run(() => units.setStyle(data.value as LengthStyle))}
      >
        <Radio value="feet" label={t.feet} />
        <Radio value="inches" label={t.inches} />
        <Radio value="mm" label={t.mm} />
      </RadioGroup>
      {task.problem && <Notice intent="error">{task.problem}</Notice>}
    </>
  );
}
