import { useState } from "react";
import { benderStrings as t } from "./benderStrings";

/** Why a piece was scrapped: one touch for the usual reasons, or one's own words. */
export function WhyScrapped({ choose, cancel }: { choose(why: string): void; cancel(): void }) {
  const [own, setOwn] = useState("");
  return (
    <fieldset className="rlb-why">
      <legend>{t.why}</legend>
      <div className="rlb-actions">
        {t.reasons.map((reason) => (
          <button key={reason} type="button" onClick={() => choose(reason)}>
            {reason}
          </button>
        ))}
      </div>
      <label className="rlb-field">
        {t.otherReason}
        <input value={own} onChange={(event) => setOwn(event.target.value)} />
      </label>
      <div className="rlb-actions">
        <button type="button" disabled={own.trim() === ""} onClick={() => choose(own.trim())}>
          {t.scrapped}
        </button>
        <button type="button" onClick={cancel}>
          {t.cancel}
        </button>
      </div>
    </fieldset>
  );
}
