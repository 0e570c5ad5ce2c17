import type { RowPlace } from "../../shop/job/job";
import type { Run } from "../../shop/run/runsTable";
import { groupCell } from "./groupBy";
import type { Item } from "./item";

/** A row that a quantity comes from. */
export interface SourceRow extends RowPlace {
  readonly run?: Run;
  /** Of a row that is no run: what stands under a column that can be grouped by. */
  readonly cell?: (column: string) => string;
}

/** The cell of such a row under a column that can be grouped by. */
export const rowCell = ({ run, cell }: SourceRow, column: string): string =>
  run ? groupCell(run, column) : (cell?.(column) ?? "");

/** Where a part of a quantity comes from. */
export interface Source {
  /** The row, or the rows that share it; none for what a rule takes off or adds. */
  readonly rows: readonly SourceRow[];
  readonly each: number;
  readonly times: number;
  readonly note: string;
  /** What the work is called in the Labor table. */
  readonly operation: string;
}

/** One line of a take-off. */
export interface TakeoffLine {
  readonly group: readonly string[];
  readonly item: Item;
  quantity: number;
  /** Of sticks: how many are used besides that are on hand. */
  onHand?: number;
  /** The quantity by what the work is called in the Labor table. */
  readonly operations: Map<string, number>;
  readonly sources: Source[];
  readonly notes: Set<string>;
}

/** Key of a list of labels: nothing that is typed into a cell holds the parting character. */
export const labelKey = (labels: readonly string[]): string => labels.join("\u0001");

/** Adds sources up into lines, one for each group and item. */
export class LineBook {
  /** By the name of the item, within each group. */
  private readonly groups = new Map<string, Map<string, TakeoffLine>>();

  /** A source without an operation of its own is called as its item's kind. */
  add(group: readonly string[], item: Item, from: Omit<Source, "operation"> & Partial<Source>): TakeoffLine {
    const line = this.lineOf(group, item);
    const source = from.operation === undefined ? { ...from, operation: item.kind } : (from as Source);
    const { operation, each, times } = source;
    line.quantity += each * times;
    line.operations.set(operation, (line.operations.get(operation) ?? 0) + each * times);
    line.sources.push(source);
    return line;
  }

  private lineOf(group: readonly string[], item: Item): TakeoffLine {
    const lines = this.linesOf(group);
    const found = lines.get(item.name);
    if (found) return found;
    const line = { group, item, quantity: 0, operations: new Map(), sources: [], notes: new Set<string>() };
    lines.set(item.name, line);
    return line;
  }

  private linesOf(group: readonly string[]): Map<string, TakeoffLine> {
    const key = group.length === 0 ? "" : labelKey(group);
    const lines = this.groups.get(key) ?? new Map<string, TakeoffLine>();
    this.groups.set(key, lines);
    return lines;
  }

  lines(): TakeoffLine[] {
    return [...this.groups.values()].flatMap((lines) => [...lines.values()]);
  }
}
