import type { Book } from "../../engine";
import { words } from "./words";

/** The name of the job at the top: what is written there names the workbook, its files and its copies. */
export function startJobName(field: HTMLInputElement, { native }: Book): void {
  const show = () => {
    field.value = native.getName();
    field.size = Math.max(8, field.value.length + 1);
  };
  field.setAttribute("aria-label", words.renamed);
  field.title = words.renamed;
  field.disabled = false;
  field.addEventListener("input", () => (field.size = Math.max(8, field.value.length + 1)));
  field.addEventListener("focus", () => field.select());
  field.addEventListener("keydown", ({ key }) => {
    if (key === "Escape") show();
    if (key === "Enter" || key === "Escape") field.blur();
  });
  field.addEventListener("change", () => {
    const name = field.value.trim();
    if (name !== "" && name !== native.getName()) native.setName(name);
    show();
  });
  show();
}
