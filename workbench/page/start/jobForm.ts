import { element } from "../dialog";
import { BENT_RACEWAYS, BENT_SIZES, type JobWishes, usualWishes } from "./jobWishes";
import { words } from "./words";

/** The few questions a job starts from, all of them answered already. */
export interface JobForm {
  fields: HTMLElement;
  /** The field to type into first. */
  first: HTMLInputElement;
  wishes(): JobWishes;
}

export function jobForm(): JobForm {
  const usual = usualWishes();
  const name = document.createElement("input");
  name.value = usual.name;
  name.maxLength = 80;
  name.addEventListener("focus", () => name.select());
  const style = selectOf(words.styles, usual.style);
  const plane = selectOf(words.planes, usual.plane);
  const raceways = ticks(words.raceways, BENT_RACEWAYS, usual.raceways);
  const sizes = ticks(words.sizes, BENT_SIZES, usual.sizes);
  const example = tick(words.example, usual.example);
  const fields = element("div");
  fields.className = "job-form";
  fields.append(
    labeled(words.name, name),
    labeled(words.units, style),
    labeled(words.bench, plane),
    raceways.group,
    sizes.group,
    example.label,
  );
  return {
    fields,
    first: name,
    wishes: () => ({
      name: name.value.trim() || usual.name,
      style: style.value as JobWishes["style"],
      plane: plane.value as JobWishes["plane"],
      raceways: raceways.chosen(),
      sizes: sizes.chosen(),
      example: example.input.checked,
    }),
  };
}

function labeled(text: string, field: HTMLElement): HTMLElement {
  const label = element("label", text);
  label.append(field);
  return label;
}

function selectOf(options: Readonly<Record<string, string>>, value: string): HTMLSelectElement {
  const select = document.createElement("select");
  select.append(...Object.entries(options).map(([key, text]) => new Option(text, key)));
  select.value = value;
  return select;
}

function ticks<T extends string>(title: string, all: readonly T[], on: readonly T[]) {
  const group = element("fieldset");
  const made = all.map((each) => ({ each, ...tick(each, on.includes(each)) }));
  group.append(element("legend", title), ...made.map(({ label }) => label));
  return { group, chosen: (): T[] => made.filter(({ input }) => input.checked).map(({ each }) => each) };
}

function tick(text: string, on: boolean): { label: HTMLElement; input: HTMLInputElement } {
  const input = document.createElement("input");
  input.type = "checkbox";
  input.checked = on;
  const label = element("label", text);
  label.className = "tick";
  label.prepend(input);
  return { label, input };
}
