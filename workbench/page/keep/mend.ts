import type { IWorkbookData } from "@univerjs/core";

/** Workbook data that opens, and in words what was left out of it for that. */
export interface Mended {
  data: IWorkbookData;
  faults: string[];
}

type Loose = Record<string, unknown>;

const isObject = (value: unknown): value is Loose =>
  typeof value === "object" && value !== null && !Array.isArray(value);

/** Leaves out what is broken inside stored data: cells that are no cells, formulas that are no text, parts of no use. */
export function mend(given: IWorkbookData): Mended {
  const data = structuredClone(given);
  const faults: string[] = [];
  for (const id of data.sheetOrder) {
    const sheet = data.sheets[id] as unknown as Loose;
    if (typeof sheet.name !== "string" || sheet.name === "") {
      sheet.name = `Sheet ${data.sheetOrder.indexOf(id) + 1}`;
      faults.push(`the name of ${String(sheet.name)}`);
    }
    const lost = mendCells(sheet);
    if (lost > 0) faults.push(`${lost} ${lost === 1 ? "cell" : "cells"} of ${String(sheet.name)}`);
    else if (lost < 0) faults.push(`every cell of ${String(sheet.name)}`);
  }
  const resources: unknown = data.resources ?? [];
  const sound = Array.isArray(resources) ? resources.filter(isReadable) : [];
  const lost = Array.isArray(resources) ? resources.length - sound.length : 1;
  if (lost > 0) faults.push("tables or lists to choose from");
  data.resources = sound as IWorkbookData["resources"];
  return { data, faults };
}

/** @returns how many cells were left out; below 0 when none could be read */
function mendCells(sheet: Loose): number {
  if (sheet.cellData === undefined) return 0;
  if (!isObject(sheet.cellData)) {
    sheet.cellData = {};
    return -1;
  }
  let lost = 0;
  for (const [at, row] of Object.entries(sheet.cellData)) {
    if (!isObject(row)) {
      delete sheet.cellData[at];
      lost += 1;
      continue;
    }
    for (const [column, cell] of Object.entries(row)) {
      if (cell === null || cell === undefined || isCell(cell)) continue;
      delete row[column];
      lost += 1;
    }
  }
  return lost;
}

function isCell(cell: unknown): boolean {
  if (!isObject(cell)) return false;
  const { v, f } = cell;
  const isValue = v === undefined || v === null || ["string", "number", "boolean"].includes(typeof v);
  return isValue && (f === undefined || f === null || typeof f === "string");
}

function isReadable(resource: unknown): boolean {
  if (!isObject(resource) || typeof resource.name !== "string" || typeof resource.data !== "string") return false;
  if (resource.data === "") return true;
  try {
    JSON.parse(resource.data);
    return true;
  } catch {
    return false;
  }
}
