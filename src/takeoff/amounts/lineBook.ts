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
  readonly quantity: number;
  /** Of sticks: how many are used besides that are on hand. */
  readonly onHand?: number;
  /** The quantity by what the work is called in the Labor table. */
  readonly operations: ReadonlyMap<string, number>;
  readonly sources: readonly Source[];
  readonly notes: ReadonlySet<string>;
}

/** A line that is still added to. */
class OpenLine implements TakeoffLine {
  quantity = 0;
  onHand?: number;
  readonly operations: Map<string, number>;
  readonly sources: Source[];
  readonly notes: Set<string>;

  constructor(
    readonly group: readonly string[],
    readonly item: Item,
    begun?: TakeoffLine,
  ) {
    this.quantity = begun?.quantity ?? 0;
    if (begun?.onHand !== undefined) this.onHand = begun.onHand;
    this.operations = new Map(begun?.operations);
    this.sources = begun ? [...begun.sources] : [];
    this.notes = new Set(begun?.notes);
  }

  add(source: Source): void {
    const { operation, each, times } = source;
    this.quantity += each * times;
    this.operations.set(operation, (this.operations.get(operation) ?? 0) + each * times);
    this.sources.push(source);
  }
}

/** Key of a list of labels: nothing that is typed into a cell holds the parting character. */
export const labelKey = (labels: readonly string[]): string => labels.join("\u0001");

/** Adds sources up into lines, one for each group and item. */
export class LineBook {
  /** By the name of the item, within each group. */
  private readonly groups = new Map<string, Map<string, TakeoffLine>>();
  /** Its own lines; others were taken over. */
  private readonly open = new Set<TakeoffLine>();

  /**
   * A source without an operation of its own is called as its item's kind.
   * What is told of the line: notes, of which the same stands once, and what is on hand besides.
   */
  add(
    group: readonly string[],
    item: Item,
    from: Omit<Source, "operation"> & Partial<Source>,
    { notes = [], onHand = 0 }: { readonly notes?: readonly string[]; readonly onHand?: number } = {},
  ): void {
    const line = this.openLine(group, item);
    line.add(from.operation === undefined ? { ...from, operation: item.kind } : (from as Source));
    for (const note of notes) line.notes.add(note);
    if (onHand > 0) line.onHand = (line.onHand ?? 0) + onHand;
  }

  /** Takes over lines that were added up elsewhere, for a group that has none of these items yet. */
  take(group: readonly string[], lines: readonly TakeoffLine[]): void {
    const own = this.linesOf(group);
    for (const line of lines) own.set(line.item.name, line.group === group ? line : { ...line, group });
  }

  find(group: readonly string[], item: Item): TakeoffLine | undefined {
    return this.linesOf(group).get(item.name);
  }

  /** A line that may be added to: one that was taken over stays as it is where it comes from. */
  private openLine(group: readonly string[], item: Item): OpenLine {
    const lines = this.linesOf(group);
    const found = lines.get(item.name);
    if (found && this.open.has(found)) return found as OpenLine;
    const line = new OpenLine(found?.group ?? group, found?.item ?? item, found);
    lines.set(item.name, line);
    this.open.add(line);
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
