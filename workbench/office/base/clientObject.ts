import { type LoadNames, loadPaths } from "./loadPaths";
import { invalidArgument, notFound, notLoaded } from "./officeError";
import type { Lookup, Requests } from "./requests";

/** How each property is read from the workbook at the moment of a sync. */
export type Readers = Readonly<Record<string, () => unknown>>;

/**
 * An object that stands for something in the workbook. It is looked for at the next sync; its properties can be read
 * once they are loaded and synced, and not before.
 */
export abstract class ClientObject<T> {
  protected abstract readonly readers: Readers;
  private found: T | null | undefined;
  private readonly known = new Map<string, unknown>();
  private readonly parts = new Map<string, unknown>();

  constructor(
    readonly requests: Requests,
    private readonly finding: Lookup<T>,
  ) {
    requests.later(() => {
      this.found = finding.find();
      if (this.found === null && !finding.orNull) throw notFound(finding.what);
    });
  }

  get isNullObject(): boolean {
    if (this.found === undefined) throw notLoaded("isNullObject");
    return this.found === null;
  }

  /** Asks for properties; they are there after the next sync. */
  load(names?: LoadNames): this {
    for (const path of loadPaths(names) ?? Object.keys(this.readers)) this.loadPath(path);
    return this;
  }

  protected loadPath(path: string): void {
    const [head, ...rest] = path.split("/") as [string, ...string[]];
    const part: unknown = rest.length > 0 ? (this as unknown as Record<string, unknown>)[head] : undefined;
    if (isLoadable(part)) {
      part.load(rest.join("/"));
      return;
    }
    this.requests.read(() => {
      if (this.found === null) return;
      const read = this.readers[path];
      if (!read) throw invalidArgument(`${this.finding.what} has no property ${path} to load.`);
      this.known.set(path, read());
    });
  }

  /** The thing itself; for actions that run in a sync. */
  get target(): T {
    if (this.found === null || this.found === undefined) throw notFound(this.finding.what);
    return this.found;
  }

  /** A property's value, if it is loaded; undefined for an object that is not there. */
  protected loaded<V>(property: string): V {
    if (!this.known.has(property) && this.found !== null) throw notLoaded(property);
    return this.known.get(property) as V;
  }

  /** Notes a property's new value, which reads back at once, and writes it at the next sync. */
  protected change<V>(property: string, value: V, write: (target: T) => void | Promise<void>): void {
    this.known.set(property, value);
    this.requests.write(() => write(this.target));
  }

  /** A part that stays the same object however often it is asked for. */
  protected part<P>(name: string, make: () => P): P {
    if (!this.parts.has(name)) this.parts.set(name, make());
    return this.parts.get(name) as P;
  }
}

const isLoadable = (value: unknown): value is { load(names: string): unknown } =>
  typeof value === "object" && value !== null && "load" in value;
