/** What a search came to, and how far that depends on the steps it was given. */
export interface Found<T> {
  readonly value: T;
  /** Steps it was given, and steps it took. */
  readonly limit: number;
  readonly spent: number;
  /** False when it was stopped by its limit: with more steps it would have gone on. */
  readonly complete: boolean;
  /** Numbers it holds, roughly. */
  readonly size: number;
}

/**
 * Keeps what searches came to by what they were asked, the newest first, up to a size. A search that its limit never
 * stopped would have taken the same way with any larger limit, and answers for it; one that was stopped answers for its
 * own limit only. So an answer never depends on what was asked before.
 */
export class Memory<T> {
  private readonly kept = new Map<string, Found<T>>();
  private size = 0;

  /** @param most numbers that are kept, roughly */
  constructor(private readonly most: number) {}

  find(key: string, limit: number): Found<T> | undefined {
    return this.touch(key, limit) ?? this.touch(stoppedKey(key, limit), limit);
  }

  keep(key: string, found: Found<T>): void {
    const at = found.complete ? key : stoppedKey(key, found.limit);
    this.drop(at);
    if (found.size > this.most) return;
    this.kept.set(at, found);
    this.size += found.size;
    for (const oldest of this.kept.keys()) {
      if (this.size <= this.most) break;
      this.drop(oldest);
    }
  }

  /** Finds it and makes it the newest. */
  private touch(at: string, limit: number): Found<T> | undefined {
    const found = this.kept.get(at);
    if (!found || (found.complete ? limit < found.limit && limit <= found.spent : limit !== found.limit))
      return undefined;
    this.kept.delete(at);
    this.kept.set(at, found);
    return found;
  }

  private drop(at: string): void {
    this.size -= this.kept.get(at)?.size ?? 0;
    this.kept.delete(at);
  }
}

const stoppedKey = (key: string, limit: number): string => `${key} stopped at ${limit}`;
