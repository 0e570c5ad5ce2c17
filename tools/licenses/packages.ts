import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";

export interface Package {
  name: string;
  version: string;
  license: string;
}

interface LockEntry {
  version?: string;
  license?: string;
  dependencies?: Record<string, string>;
  peerDependencies?: Record<string, string>;
  peerDependenciesMeta?: Record<string, { optional?: boolean }>;
}

type Lock = Record<string, LockEntry>;

/** Rooms whose imports end up in what is served. */
const rooms = ["src", "functions", "taskpane", "workbench"];

/** The packages that our code imports, and those that they import in turn, by the lock file. */
export function bundledPackages(root: string): Package[] {
  const lock = readLock(root);
  const found = new Map<string, Package>();
  const waiting = importedNames(root).map((name) => ({ name, from: "" }));
  for (let next = waiting.pop(); next; next = waiting.pop()) {
    const path = locate(lock, next.name, next.from);
    if (path === undefined || found.has(path)) continue;
    const entry = lock[path]!;
    found.set(path, { name: next.name, version: entry.version ?? "", license: licenseOf(root, path, entry) });
    const optional = entry.peerDependenciesMeta ?? {};
    const peers = Object.keys(entry.peerDependencies ?? {}).filter((name) => !optional[name]?.optional);
    for (const name of [...Object.keys(entry.dependencies ?? {}), ...peers]) waiting.push({ name, from: path });
  }
  return sorted([...found.values()]);
}

/** The packages that package.json names for building and testing. */
export function toolPackages(root: string): Package[] {
  const lock = readLock(root);
  const { devDependencies, optionalDependencies } = lock[""] as Record<string, Record<string, string> | undefined>;
  const bundled = new Set(bundledPackages(root).map(({ name }) => name));
  const names = Object.keys({ ...devDependencies, ...optionalDependencies }).filter((name) => !bundled.has(name));
  return sorted(
    names.map((name) => {
      const path = `node_modules/${name}`;
      const entry = lock[path] ?? {};
      return { name, version: entry.version ?? "", license: licenseOf(root, path, entry) };
    }),
  );
}

function readLock(root: string): Lock {
  return (JSON.parse(readFileSync(join(root, "package-lock.json"), "utf8")) as { packages: Lock }).packages;
}

/** The nearest installed copy, as Node looks for it. */
function locate(lock: Lock, name: string, from: string): string | undefined {
  for (let folder = from; ; folder = folder.slice(0, Math.max(0, folder.lastIndexOf("/node_modules/")))) {
    const path = folder === "" ? `node_modules/${name}` : `${folder}/node_modules/${name}`;
    if (lock[path]) return path;
    if (folder === "") return undefined;
  }
}

function licenseOf(root: string, path: string, { license }: LockEntry): string {
  if (license && !/LICENSE/i.test(license)) return license;
  const file = join(root, path, "LICENSE");
  const text = existsSync(file) ? readFileSync(file, "utf8") : "";
  if (/Apache License\s+Version 2\.0/.test(text)) return "Apache-2.0";
  if (/^\s*(The )?MIT License/i.test(text)) return "MIT";
  return text.trim() ? text.trim().split("\n")[0]!.replace(/^#\s*/, "") : "unknown";
}

function importedNames(root: string): string[] {
  const names = new Set<string>();
  const read = (folder: string): void => {
    for (const entry of readdirSync(folder, { withFileTypes: true })) {
      const path = join(folder, entry.name);
      if (entry.isDirectory()) read(path);
      else if (/\.tsx?$/.test(entry.name)) {
        for (const [, name] of readFileSync(path, "utf8").matchAll(
          /(?:from|import)\s*\(?"((?:@[\w.-]+\/)?[\w.-]+)(?:\/[^"]*)?"/g,
        )) {
          if (name !== "node:" && !name!.startsWith(".")) names.add(name!);
        }
      }
    }
  };
  for (const room of rooms) read(join(root, room));
  return [...names];
}

const sorted = (packages: Package[]): Package[] =>
  packages.sort((one, other) => (`${one.name} ${one.version}` < `${other.name} ${other.version}` ? -1 : 1));
