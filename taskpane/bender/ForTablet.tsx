import { Field, Textarea } from "@fluentui/react-components";
import { useState } from "react";
import type { MergedMade } from "../../src/made/records/mergeMade";
import { readRecordsText } from "../../src/made/records/recordsText";
import { CopyText } from "./CopyText";
import { Notice } from "../components/Notice";
import { Section } from "../components/Section";
import { saveText } from "../components/saveText";
import { SheetButton } from "../components/SheetButton";
import { useTask } from "../hooks/useTask";
import type { TableCells } from "../excel";
import { useLedger } from "../hooks/useLedger";
import { useWorkbook } from "../hooks/useWorkbook";
import { addToMade } from "../made/addToMade";
import { benderStrings as t } from "./benderStrings";

const FILE = "job for the bender.json";

/** The job out to a device at the bender, and its records back into Made. */
export function ForTablet({
  job,
  made,
  reload,
}: {
  job: string;
  made: TableCells | undefined;
  reload(): Promise<void>;
}) {
  const workbook = useWorkbook();
  const { mustBeFresh } = useLedger();
  const task = useTask();
  const [saved, setSaved] = useState("");
  const [pasted, setPasted] = useState("");
  const [merged, setMerged] = useState<MergedMade>();
  const merge = (text: string) =>
    task.run(async () => {
      setMerged(undefined);
      mustBeFresh();
      if (!made) throw new Error(t.noTable);
      setMerged(await addToMade(workbook, made, readRecordsText(text)));
      setPasted("");
      await reload();
    });
  return (
    <Section title={t.forTablet}>
      {workbook.waysOut().saves ? (
        <SheetButton
          onClick={() => {
            saveText(job, FILE, "application/json");
            setSaved(FILE);
          }}
        >
          {t.saveJob}
        </SheetButton>
      ) : (
        <CopyText label={t.copyJob} text={job} copied={t.copiedJob} />
      )}
      {saved && <Notice intent="success">{t.savedJob(saved)}</Notice>}
      <Field label={t.paste}>
        <Textarea value={pasted} onChange={(_, { value }) => setPasted(value)} />
      </Field>
      <div className="rl-row">
        <SheetButton disabledFocusable={task.busy || pasted.trim() === ""} onClick={() => void merge(pasted)}>
          {t.addRecords}
        </SheetButton>
        <label>
          {t.fromFile}{" "}
          <input
            type="file"
            accept=".tsv,.txt,text/plain"
            onChange={({ currentTarget }) => {
              void currentTarget.files?.[0]?.text().then(merge);
              currentTarget.value = "";
            }}
          />
        </label>
      </div>
      {task.problem && <Notice intent="error">{task.problem}</Notice>}
      {merged && <Notice intent="success">{t.merged(merged.rows.length, merged.known)}</Notice>}
      {merged?.conflicts.map(({ id, differences }) => (
        <Notice key={id} intent="warning">
          {t.conflict(id, differences.map(({ column, here, there }) => t.difference(column, here, there)).join("; "))}
        </Notice>
      ))}
      {merged?.refused.map((words) => (
        <Notice key={words} intent="warning">
          {words}
        </Notice>
      ))}
    </Section>
  );
}
