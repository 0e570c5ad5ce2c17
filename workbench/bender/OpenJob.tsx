import { useState } from "react";
import { benderStrings as t } from "../../taskpane/bender/benderStrings";

/** A job by its file or pasted. */
export function OpenJob({ open, problem }: { open(text: string): void; problem: string }) {
  const [pasted, setPasted] = useState("");
  return (
    <section aria-labelledby="open-job">
      <h2 id="open-job">{t.openJob}</h2>
      <p>{t.openWords}</p>
      <input
        type="file"
        aria-label={t.openJob}
        accept=".json,application/json"
        onChange={({ currentTarget }) => void currentTarget.files?.[0]?.text().then(open)}
      />
      <label className="rlb-field">
        {t.pasteJob}
        <textarea rows={3} value={pasted} onChange={(event) => setPasted(event.target.value)} />
      </label>
      <button type="button" disabled={pasted.trim() === ""} onClick={() => open(pasted)}>
        {t.open}
      </button>
      {problem && (
        <p role="alert" className="rlb-problem">
          {problem}
        </p>
      )}
    </section>
  );
}
