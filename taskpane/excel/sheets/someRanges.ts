import { cellName } from "../../workbook/address";
import { ifThere } from "../ifThere";
import type { PrintArea } from "./printArea";

/**
 * Longest text of addresses in one call [characters]: Excel refuses some 8,200 (OfficeDev/office-js#5198), and how many it
 * takes is written nowhere.
 */
const ADDRESSES = 2000;

/** Gives many areas of a sheet a look, several with each call, where the host has it. */
export function eachWith(
  sheet: Excel.Worksheet,
  areas: readonly PrintArea[],
  look: (ranges: Excel.RangeAreas) => void,
): void {
  for (const address of addresses(areas)) ifThere(() => look(sheet.getRanges(address)));
}

/** Areas by what they have in common. */
export function grouped<A, K>(areas: readonly A[], key: (area: A) => K): Map<K, A[]> {
  const groups = new Map<K, A[]>();
  for (const area of areas) {
    const group = groups.get(key(area));
    if (group) group.push(area);
    else groups.set(key(area), [area]);
  }
  return groups;
}

function addresses(areas: readonly PrintArea[]): string[] {
  const found: string[] = [];
  for (const { row, column, rows, columns } of areas) {
    const address = `${cellName(row, column)}:${cellName(row + rows - 1, column + columns - 1)}`;
    const last = found.at(-1);
    if (last !== undefined && last.length + address.length < ADDRESSES) found[found.length - 1] = `${last},${address}`;
    else found.push(address);
  }
  return found;
}
