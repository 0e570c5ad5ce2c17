import { OfficeError } from "./officeError";

/** What every Office object has and no part of one spells out in full. */
type Given = "load" | "context" | "toJSON" | "set" | "track" | "untrack";

/**
 * Hands out a part of an Office object as the whole type. The compiler holds the members that are there to their
 * types; a member that is not there is refused when it is used, as an older Excel does.
 */
export function whole<T extends object>(part: Partial<Omit<T, Given>>, name: string): T {
  return new Proxy(part, {
    get(target, member, receiver) {
      if (member in target || typeof member === "symbol" || passive.has(member))
        return Reflect.get(target, member, receiver);
      throw missing(name, member);
    },
    set(target, member, value, receiver) {
      if (!(member in target)) throw missing(name, String(member));
      return Reflect.set(target, member, value, receiver);
    },
  }) as unknown as T;
}

/** Names that are looked up without meaning the API: by `await` and by JSON.stringify. */
const passive: ReadonlySet<string> = new Set(["then", "toJSON"]);

const missing = (object: string, member: string): OfficeError =>
  new OfficeError("ApiNotFound", `The local page does not have ${object}.${member}.`, `${object}.${member}`);
