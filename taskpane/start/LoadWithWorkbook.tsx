import { Checkbox, Field } from "@fluentui/react-components";
import { useEffect, useState } from "react";
import { Notice } from "../components/Notice";
import { useTask } from "../hooks/useTask";
import { useWorkbook } from "../hooks/useWorkbook";
import { strings } from "../strings";

const t = strings.start.load;

/** Lets the add-in load with this workbook, where Excel can do that. */
export function LoadWithWorkbook() {
  const workbook = useWorkbook();
  const task = useTask();
  const [loads, setLoads] = useState<boolean>();
  useEffect(() => {
    void workbook.loadsWithWorkbook().then(setLoads, () => undefined);
  }, [workbook]);
  if (loads === undefined) return null;
  const change = (wanted: boolean) =>
    task.run(async () => {
      await workbook.loadWithWorkbook(wanted);
      setLoads(wanted);
    });
  return (
    <>
      <Field hint={t.hint}>
        <Checkbox checked={loads} label={t.label} onChange={(_, { checked }) => void change(checked === true)} />
      </Field>
      {task.problem && <Notice intent="error">{task.problem}</Notice>}
    </>
  );
}
