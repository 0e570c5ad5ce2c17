/** Columns of the linear program, stored one after another for fast scanning. Column entries are whole numbers. */
export class ColumnPool {
  /** Entries of column j stand at `start[j]` up to `start[j + 1]`. */
  start: Int32Array = new Int32Array(256);
  rows: Int32Array = new Int32Array(1024);
  values: Float64Array = new Float64Array(1024);
  costs: Float64Array = new Float64Array(256);
  count = 0;
  private readonly seen = new Map<string, number>();

  /** Number of entries in all columns. */
  get size(): number {
    return this.start[this.count]!;
  }

  /** Adds a column and returns its number; undefined when it is there already. */
  add(rows: readonly number[], values: readonly number[], cost: number): number | undefined {
    const key = rows.map((row, k) => `${row}:${values[k]!}`).join() + `@${cost}`;
    if (this.seen.has(key)) return undefined;
    this.seen.set(key, this.count);
    this.makeRoom(rows.length);
    let end = this.size;
    rows.forEach((row, k) => {
      this.rows[end] = row;
      this.values[end] = values[k]!;
      end++;
    });
    this.costs[this.count] = cost;
    this.count++;
    this.start[this.count] = end;
    return this.count - 1;
  }

  /** Cost of column j less its worth at these row prices. */
  reducedCost(j: number, prices: Float64Array): number {
    let worth = this.costs[j]!;
    for (let k = this.start[j]!, end = this.start[j + 1]!; k < end; k++)
      worth -= prices[this.rows[k]!]! * this.values[k]!;
    return worth;
  }

  private makeRoom(entries: number): void {
    if (this.count + 2 > this.costs.length) {
      this.costs = grow(this.costs, new Float64Array(2 * this.costs.length));
      this.start = grow(this.start, new Int32Array(2 * this.start.length));
    }
    if (this.size + entries > this.rows.length) {
      const room = 2 * (this.rows.length + entries);
      this.rows = grow(this.rows, new Int32Array(room));
      this.values = grow(this.values, new Float64Array(room));
    }
  }
}

function grow<T extends Int32Array | Float64Array>(from: T, to: T): T {
  to.set(from);
  return to;
}
