import { lookUpKey } from "../../units/names/lookUpKey";

/** An end so named has no box and no connector: a stub left open, with a bushing. */
const OPEN = "open";

export const isOpen = (end: string): boolean => lookUpKey(end) === OPEN;

/** What an end of a pull is at, for what the fitting there takes of the conduit. */
export type EndKind = "box" | "hub" | "body";

/** The letters of the conduit body that an end's name has; undefined where it names none. */
export const bodyNamed = (name: string): string | undefined => /\b(LB|LL|LR)\b/i.exec(name)?.[1]?.toUpperCase();

/**
 * What the name of an end says it is; a box where it says nothing, and nothing for an open end.
 *
 * @example endKind("LB-3") //=> "body"
 */
export function endKind(name: string): EndKind | undefined {
  if (isOpen(name)) return undefined;
  if (/\bhub\b/i.test(name)) return "hub";
  return /\b(LB|LL|LR|body)\b/i.test(name) ? "body" : "box";
}
