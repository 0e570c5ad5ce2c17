import { Field, Input } from "@fluentui/react-components";

/** A labelled text field; what is wrong with its text stands right under it. */
export function Entry({
  label,
  value,
  onChange,
  onCommit,
  problem,
  hint,
  unit,
}: {
  label: string;
  value: string;
  onChange(value: string): void;
  /** The person is done with it: Enter, or on to the next field. */
  onCommit?(): void;
  problem?: string | undefined;
  hint?: string | undefined;
  /** Shown at the field's end. */
  unit?: string | undefined;
}) {
  return (
    <Field
      label={label}
      size="small"
      hint={hint}
      validationState={problem ? "error" : "none"}
      validationMessage={problem || undefined}
    >
      <Input
        size="small"
        value={value}
        autoComplete="off"
        spellCheck={false}
        contentAfter={unit ? <span className="rl-unit">{unit}</span> : undefined}
        onChange={(_, data) => onChange(data.value)}
        onBlur={onCommit}
        onKeyDown={(event) => {
          if (event.key === "Enter") onCommit?.();
        }}
      />
    </Field>
  );
}
