import { Field, Textarea } from "@fluentui/react-components";
import { useRef, useState } from "react";
import { Notice } from "../components/Notice";
import { SheetButton } from "../components/SheetButton";
import { strings } from "../strings";

/** Copies a text where no file of it can be saved; it stands selected below for whom the pane may not copy. */
export function CopyText({ label, text, copied }: { label: string; text: string; copied: string }) {
  const field = useRef<HTMLTextAreaElement>(null);
  const [told, setTold] = useState("");
  const copy = async () => {
    const copying = navigator.clipboard?.writeText(text) ?? Promise.reject(new Error("no clipboard"));
    const done = await copying.then(
      () => true,
      () => false,
    );
    field.current?.select();
    setTold(done ? copied : strings.common.copyByHand);
  };
  return (
    <>
      <SheetButton onClick={() => void copy()}>{label}</SheetButton>
      <Field label={strings.common.asText}>
        <Textarea ref={field} readOnly rows={2} value={text} />
      </Field>
      {told && <Notice intent={told === copied ? "success" : "warning"}>{told}</Notice>}
    </>
  );
}
