import { Button, Field, Input, Select } from "@fluentui/react-components";
import { AddRegular, ArrowDownRegular, ArrowUpRegular, DeleteRegular } from "@fluentui/react-icons";
import { useEffect, useId, useRef, useState, type KeyboardEvent, type ReactElement } from "react";
import { strings } from "../strings";
import { moveStep, splitRoute, stepProblem } from "./steps";

interface StepListProps {
  steps: readonly string[];
  /** Words about a step that reads but cannot be built, by its number. */
  notes: ReadonlyMap<number, string>;
  /** Each keystroke, for the drawing. */
  onDraft(steps: string[]): void;
  /** The step the person is in, counted from 1; 0 for none. */
  onStep(step: number): void;
  /** The person is done with a change: it goes into the sheet. */
  onCommit(steps: string[]): void;
  /** The person does not want what was typed since the last change. */
  onRestore(): void;
  /** A step was removed from these. */
  onRemoved(before: readonly string[], place: number): void;
}

const t = strings.run.steps;

/** The steps of a route, one field each: add, reorder, remove, by mouse or by keyboard. */
export function StepList({ steps, notes, onDraft, onStep, onCommit, onRestore, onRemoved }: StepListProps) {
  const list = useRef<HTMLOListElement>(null);
  const focusNext = useRef<number | undefined>(undefined);
  const help = useId();
  useEffect(() => {
    const index = focusNext.current;
    if (index === undefined) return;
    focusNext.current = undefined;
    const input = list.current?.querySelectorAll("input")[index];
    input?.focus();
    input?.select();
  }, [steps]);

  const move = (index: number, by: -1 | 1) => {
    focusNext.current = Math.max(0, Math.min(steps.length - 1, index + by));
    onCommit(moveStep(steps, index, by));
  };
  const insert = (index: number) => {
    focusNext.current = index;
    onCommit([...steps.slice(0, index), t.samples[0]?.text ?? "", ...steps.slice(index)]);
  };
  const remove = (index: number) => {
    focusNext.current = Math.min(index, steps.length - 2);
    onCommit(steps.filter((_, place) => place !== index));
    onRemoved(steps, index + 1);
  };
  const write = (index: number, text: string) => {
    focusNext.current = index;
    onCommit(steps.flatMap((step, place) => (place === index ? splitRoute(text) : [step])));
  };
  const add = (text: string) => {
    focusNext.current = steps.length;
    onCommit([...steps, text]);
  };
  const onKey = (event: KeyboardEvent, index: number) => {
    const typing = event.target instanceof HTMLInputElement && event.target.value !== "";
    if (event.altKey && event.key === "ArrowUp") move(index, -1);
    else if (event.altKey && event.key === "ArrowDown") move(index, 1);
    else if (event.altKey && event.key === "Insert") insert(index);
    else if (event.key === "Escape") onRestore();
    else if (event.key === "Delete" && (event.altKey || !typing)) remove(index);
    else return;
    event.preventDefault();
  };

  return (
    <>
      <p id={help} className="rl-hint">
        {t.help}
      </p>
      {steps.length === 0 && <p>{t.empty}</p>}
      <ol className="rl-steps" ref={list}>
        {steps.map((step, index) => {
          const unread = stepProblem(step, index + 1);
          const problem = unread?.words ?? notes.get(index + 1);
          return (
            <li
              key={index}
              onKeyDown={(event) => onKey(event, index)}
              onFocus={() => onStep(index + 1)}
              onBlur={() => onStep(0)}
            >
              <Field validationState={problem ? "error" : "none"} validationMessage={problem} size="small">
                <Input
                  size="small"
                  value={step}
                  aria-label={t.label(index + 1)}
                  aria-describedby={help}
                  spellCheck={false}
                  autoComplete="off"
                  onChange={(_, data) => onDraft(steps.map((old, place) => (place === index ? data.value : old)))}
                  onBlur={() => onCommit([...steps])}
                  onKeyDown={(event) => {
                    if (event.key === "Enter") onCommit([...steps]);
                  }}
                />
              </Field>
              <span className="rl-step-tools">
                <Tool icon={<ArrowUpRegular />} name={t.up(index + 1)} off={index === 0} use={() => move(index, -1)} />
                <Tool
                  icon={<ArrowDownRegular />}
                  name={t.down(index + 1)}
                  off={index === steps.length - 1}
                  use={() => move(index, 1)}
                />
                <Tool icon={<AddRegular />} name={t.insert(index + 1)} use={() => insert(index)} />
                <Tool icon={<DeleteRegular />} name={t.remove(index + 1)} use={() => remove(index)} />
              </span>
              {unread && unread.meant.length > 0 && (
                <div className="rl-meant">
                  {unread.meant.map((text) => (
                    <Button key={text} size="small" onClick={() => write(index, text)}>
                      {t.write(text)}
                    </Button>
                  ))}
                </div>
              )}
            </li>
          );
        })}
      </ol>
      <AddStep onAdd={add} />
    </>
  );
}

function AddStep({ onAdd }: { onAdd(text: string): void }) {
  const [sample, setSample] = useState<string>(t.samples[0]?.text ?? "");
  return (
    <div className="rl-row">
      <Select size="small" aria-label={t.kind} value={sample} onChange={(_, data) => setSample(data.value)}>
        {t.samples.map(({ name, text }) => (
          <option key={text} value={text}>
            {`${name}: ${text}`}
          </option>
        ))}
      </Select>
      <Button size="small" icon={<AddRegular />} onClick={() => onAdd(sample)}>
        {t.add}
      </Button>
    </div>
  );
}

interface ToolProps {
  readonly icon: ReactElement;
  readonly name: string;
  /** It stays in the order of the Tab key where there is nothing to do. */
  readonly off?: boolean;
  use(): void;
}

/** A small button beside a step. */
function Tool({ icon, name, off, use }: ToolProps) {
  return (
    <Button
      size="small"
      appearance="subtle"
      icon={icon}
      aria-label={name}
      title={name}
      disabledFocusable={off}
      onClick={use}
    />
  );
}
