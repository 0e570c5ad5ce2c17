/** What `load` takes: "a,b/c", ["a", "b/c"], { a: true, b: { c: true } } or { select: "a" }. */
export type LoadNames = string | readonly string[] | object;

/** The paths that are asked for; null stands for all of an object's own properties. */
export function loadPaths(names: LoadNames | undefined): string[] | null {
  if (names === undefined) return null;
  if (typeof names === "string") return split(names);
  if (Array.isArray(names)) return (names as string[]).flatMap(split);
  return Object.entries(names).flatMap(([name, wanted]): string[] => {
    if (name === "select" || name === "expand") return loadPaths(wanted as LoadNames) ?? [];
    if (typeof wanted === "object" && wanted !== null)
      return (loadPaths(wanted as object) ?? []).map((path) => `${name}/${path}`);
    return wanted === true ? [name] : [];
  });
}

const split = (names: string): string[] =>
  names
    .split(",")
    .map((name) => name.trim())
    .filter((name) => name !== "");
