import { Field, Select } from "@fluentui/react-components";

export interface Option<T extends string> {
  value: T;
  text: string;
}

/** A labelled drop-down. */
export function Choice<T extends string>({
  label,
  value,
  options,
  onChange,
  hint,
}: {
  label: string;
  value: T;
  options: readonly (T | Option<T>)[];
  onChange(value: T): void;
  hint?: string;
}) {
  return (
    <Field label={label} hint={hint} size="small">
      <Select size="small" value={value} onChange={(_, data) => onChange(data.value as T)}>
        {options.map((option) => {
          const { value: key, text } = typeof option === "string" ? { value: option, text: option } : option;
          return (
            <option key={key} value={key}>
              {text}
            </option>
          );
        })}
      </Select>
    </Field>
  );
}
