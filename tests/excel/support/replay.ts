import { ACTION, PATH, type Action, type Answer, type Arguments, type Message } from "./wire";

type Members = Record<string, unknown>;

/** A member of Excel that the local workbook does not hold: whatever is asked of it is done by nobody. */
const HOLE: Members = {};

const camel = (name: string): string => name.charAt(0).toLowerCase() + name.slice(1);
const pascal = (name: string): string => name.charAt(0).toUpperCase() + name.slice(1);

/** Does what requests of Microsoft's Office.js say in the local workbook, action by action, as Excel does. */
export class Replay {
  /** Members asked for that the local workbook does not hold. */
  readonly notHeld = new Set<string>();
  /** Members that were asked for and done. */
  readonly held = new Set<string>();
  private readonly references = new Map<string, Members>();

  /** @param lacking members that the local workbook may lack: looks of the page, and nothing that holds anything */
  constructor(
    private readonly local: Excel.RequestContext,
    private readonly lacking: ReadonlySet<string>,
    private readonly listen: (event: string) => void,
  ) {}

  /** @param fail the code to fail with before an action; undefined where it goes on */
  async execute(message: Message, fail: (action: Action, index: number) => string | undefined): Promise<Answer> {
    const found = new Map<number, Members>();
    const results: Answer["Results"] = [];
    for (const [index, action] of message.Actions.entries()) {
      try {
        const code = fail(action, index);
        if (code) throw Object.assign(new Error("fault of the test"), { code });
        results.push({ ActionId: action.Id, Value: await this.perform(action, message, found) });
      } catch (error) {
        const { code = "GeneralException", message: words } = error as Error & { code?: string };
        return { Results: results, Error: { Code: code, Message: words, Location: action.Name, ActionIndex: index } };
      }
    }
    return { Results: results };
  }

  private async perform(action: Action, message: Message, found: Map<number, Members>): Promise<unknown> {
    const { ActionType: type, Name: name } = action;
    if (type === ACTION.trace || name === "_KeepReference") return null;
    const target = this.object(action.ObjectPathId, message, found);
    if (type === ACTION.instantiate) return this.identity(target);
    if (type === ACTION.query) return this.query(target, action.QueryInfo?.Select ?? []);
    if (name.startsWith("_")) {
      this.listen(name);
      return null;
    }
    const given = this.given(action.ArgumentInfo, message, found);
    if (type === ACTION.set) {
      this.tried(target, name, () => (target[camel(name)] = given[0]));
      await this.local.sync();
      return null;
    }
    const result = this.tried(target, name, () => (target[camel(name)] as (...all: unknown[]) => unknown)(...given));
    await this.local.sync();
    return result === HOLE ? 0 : ((result as { value?: unknown } | undefined)?.value ?? null);
  }

  /** The local object a path leads to. */
  private object(id: number, message: Message, found: Map<number, Members>): Members {
    const known = found.get(id);
    if (known) return known;
    const path = message.ObjectPaths[id]!;
    const parent = path.ParentObjectPathId ? this.object(path.ParentObjectPathId, message, found) : HOLE;
    const given = this.given(path.ArgumentInfo, message, found);
    const call = (name: string) =>
      this.tried(parent, name, () => (parent[camel(name)] as (...all: unknown[]) => Members)(...given));
    const ways: Readonly<Record<number, () => Members>> = {
      [PATH.workbook]: () => this.local.workbook as unknown as Members,
      [PATH.method]: () => call(path.Name),
      [PATH.property]: () => this.tried(parent, path.Name, () => parent[camel(path.Name)] as Members),
      [PATH.indexer]: () => call("GetItem"),
      [PATH.reference]: () => this.references.get(path.Name)!,
    };
    const made = ways[path.ObjectPathType]?.();
    if (!made) throw new Error(`the replay knows no path of type ${path.ObjectPathType} (${path.Name})`);
    found.set(id, made);
    return made;
  }

  private given(info: Arguments | undefined, message: Message, found: Map<number, Members>): unknown[] {
    return (info?.Arguments ?? []).map((value, at) => {
      const id = info?.ReferencedObjectPathIds?.[at];
      return typeof id === "number" && id > 0 ? this.object(id, message, found) : value;
    });
  }

  /** Does something, unless the local workbook lacks the member. */
  private tried<T>(target: Members, name: string, work: () => T): T {
    if (target === HOLE) return HOLE as T;
    try {
      const result = work();
      this.held.add(camel(name));
      return result;
    } catch (error) {
      const member = (error as { debugInfo?: { errorLocation?: string } }).debugInfo?.errorLocation ?? "";
      if (!this.lacking.has(member)) throw error;
      this.notHeld.add(member);
      return HOLE as T;
    }
  }

  /** What Excel tells of an object when it is first named, by which Office.js names it from then on. */
  private async identity(target: Members): Promise<unknown> {
    await this.local.sync();
    if (target === HOLE) return {};
    if ("isNullObject" in target && target.isNullObject) return null;
    if ("getEntireColumn" in target) {
      const reference = `range${this.references.size}`;
      this.references.set(reference, target);
      return { _ReferenceId: reference };
    }
    if (!("id" in target)) return {};
    (target.load as (names: string) => void)("id");
    await this.local.sync();
    return { Id: target.id };
  }

  private async query(target: Members, names: readonly string[]): Promise<unknown> {
    if (target === HOLE) return {};
    const isList = "items" in target;
    (target.load as (names: string) => void)(names.map((name) => (isList ? `items/${name}` : name)).join(","));
    await this.local.sync();
    if ("isNullObject" in target && target.isNullObject) return null;
    const told = (each: Members) => Object.fromEntries(names.map((name) => [pascal(name), each[name]]));
    if (!isList) return told(target);
    const items = target.items as Members[];
    for (const item of items) if ("id" in item) (item.load as (names: string) => void)("id");
    await this.local.sync();
    return { _Items: items.map((item) => ({ ...told(item), ...("id" in item ? { Id: item.id } : {}) })) };
  }
}
