import { Button } from "@fluentui/react-components";
import { useState } from "react";
import { printHtml, saveHtml } from "../tickets/paper/printHtml";
import type { Seen } from "./report";
import { trialStrings as t } from "./trialStrings";

const PAGE = `<!doctype html><title>${t.page}</title><p>${t.page}</p>`;
const WAYS = {
  print: { button: t.tryPrint, question: t.sawPrint, go: () => printHtml(PAGE) },
  save: { button: t.trySave, question: t.sawSave, go: () => saveHtml(PAGE, t.fileName) },
};

/** Prints and saves a small page, and asks whether anything came of it: the pane cannot see that. */
export function AskPerson({ seen, onSeen }: { seen: Seen; onSeen(seen: Seen): void }) {
  const [tried, setTried] = useState<ReadonlySet<string>>(new Set());
  return (
    <div className="rl-stack" role="group" aria-label={t.byHand}>
      <span>{t.byHand}</span>
      {(["print", "save"] as const).map((way) => {
        const { button, question, go } = WAYS[way];
        const answer = (saw: boolean) => onSeen({ ...seen, [way]: saw });
        const tryIt = () => {
          go();
          setTried((before) => new Set([...before, way]));
        };
        return (
          <div key={way} className="rl-row">
            <Button onClick={tryIt}>{button}</Button>
            {tried.has(way) && (
              <span role="group" aria-label={question} className="rl-row">
                {question}
                {[true, false].map((saw) => (
                  <Button
                    key={String(saw)}
                    size="small"
                    appearance={seen[way] === saw ? "primary" : "secondary"}
                    aria-pressed={seen[way] === saw}
                    onClick={() => answer(saw)}
                  >
                    {saw ? t.yes : t.no}
                  </Button>
                ))}
              </span>
            )}
          </div>
        );
      })}
    </div>
  );
}
