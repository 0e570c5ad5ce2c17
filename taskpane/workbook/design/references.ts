import type { Column } from "../../../src/table/headerTable";
import { attempt } from "../../components/attempt";
import { columnPlaces } from "../columns";

/** A table as formulas name it: its name and its headers as they stand. */
export interface NamedTable {
  readonly name: string;
  readonly headers: readonly string[];
}

/** A header inside a structured reference: these characters mean something there. */
const quoted = (header: string): string => `[${header.replace(/(['[\]#@])/g, "'$1")}]`;

/** The part of a table that formulas read: from the first to the last of some columns, header row and all. */
export const columnsOfTable = (table: NamedTable, columns: readonly Column[], part = "#All"): string => {
  const places = [...(attempt(() => columnPlaces(table.headers, columns)).value?.values() ?? [])];
  if (places.length === 0) return `${table.name}[${part}]`;
  const [first, last] = [Math.min(...places), Math.max(...places)];
  if (part === "#All" && first === 0 && last === table.headers.length - 1) return `${table.name}[#All]`;
  const [from, to] = [quoted(table.headers[first]!), quoted(table.headers[last]!)];
  return `${table.name}[[${part}],${from}${first === last ? "" : `:${to}`}]`;
};

/** A cell of the formula's own row. */
export const ownCell = (table: NamedTable, column: Column, columns: readonly Column[]): string => {
  const place = attempt(() => columnPlaces(table.headers, columns)).value?.get(column.name);
  return place === undefined ? '""' : `${table.name}[[#This Row],${quoted(table.headers[place]!)}]`;
};
