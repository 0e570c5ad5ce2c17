import { FakeBook } from "./fakeBook";

export interface Loaded {
  load(names: string): this;
  [name: string]: unknown;
}

/** What is asked of a workbook waits here for `sync`. */
export class Context {
  private queue: (() => void)[] = [];

  constructor(
    readonly book: FakeBook,
    private readonly waitsForEdit = false,
  ) {}

  later(action: () => void): void {
    this.queue.push(action);
  }

  sync = async (): Promise<void> => {
    this.book.syncs++;
    await this.book.receive(this.waitsForEdit);
    this.flush();
  };

  /** Does what waits. */
  flush(): void {
    for (const action of this.queue.splice(0)) action();
  }
}

/**
 * An object whose properties can be read only after load and sync, and set only where a setter is given.
 * @param read its properties as they are now
 */
export function loadable<T extends object>(
  context: Context,
  methods: T,
  read: () => Record<string, unknown>,
  setters: Readonly<Record<string, (value: never) => void>> = {},
): T & Loaded {
  const loaded = new Map<string, unknown>();
  const target = {
    ...methods,
    load(names: string) {
      const wanted = names.split(",").map((name) => name.trim().split("/")[0] as string);
      context.later(() => {
        const values = read();
        for (const name of wanted) {
          if (!(name in values)) throw new Error(`the fake has no property ${name}`);
          loaded.set(name, values[name]);
        }
        // Known after any sync, loaded or not.
        if ("isNullObject" in values) loaded.set("isNullObject", values.isNullObject);
      });
      return proxy;
    },
  };
  const proxy: T & Loaded = new Proxy(target as unknown as T & Loaded, {
    get(object, name) {
      if (name in object || typeof name === "symbol" || name === "then") return object[name as string];
      if (!loaded.has(name)) throw Object.assign(new Error(`${name} was not loaded`), { code: "PropertyNotLoaded" });
      return loaded.get(name);
    },
    set(_, name, value: never) {
      const setter = setters[String(name)];
      if (!setter) throw new Error(`the fake cannot set ${String(name)}`);
      context.later(() => setter(value));
      return true;
    },
  });
  return proxy;
}
