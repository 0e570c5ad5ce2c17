import { useState } from "react";
import { recordsText, type RecordCells } from "../../src/made/records/recordsText";
import { benderStrings as t } from "../../taskpane/bender/benderStrings";
import { saveText } from "../../taskpane/components/saveText";

/** The records of this device: saved, copied, and cleared once they are in Made. */
export function KeptRecords({
  records,
  forget,
}: {
  records: readonly RecordCells[];
  forget(records: readonly RecordCells[]): void;
}) {
  const [said, setSaid] = useState("");
  const text = recordsText(records);
  const copy = async () => {
    await navigator.clipboard.writeText(text);
    setSaid(t.copied);
  };
  return (
    <section aria-labelledby="kept-records">
      <h2 id="kept-records">{t.records(records.length)}</h2>
      {records.length > 0 && (
        <>
          <p>{t.recordsWords}</p>
          <div className="rlb-actions">
            <button
              type="button"
              onClick={() =>
                saveText(text, `records ${new Date().toISOString().slice(0, 16).replace(":", "")}.tsv`, "text/plain")
              }
            >
              {t.saveRecords}
            </button>
            <button type="button" onClick={() => void copy().catch((error: Error) => setSaid(error.message))}>
              {t.copyRecords}
            </button>
          </div>
          <button
            type="button"
            onClick={() => {
              if (window.confirm(t.forgetSure(records.length))) forget(records);
            }}
          >
            {t.forget}
          </button>
        </>
      )}
      <p role="status">{said}</p>
    </section>
  );
}
