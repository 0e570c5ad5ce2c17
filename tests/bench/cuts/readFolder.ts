import { existsSync, readdirSync, readFileSync } from "node:fs";
import { basename, join } from "node:path";
import type { InstanceClass } from "./instances";

/**
 * Reads instances from a folder: a text file each; first line the number of lengths, second the stick, then a length and
 * its demand a line. A file `bounds.tsv` (name, lower, upper) gives the least number of sticks where both are the same.
 */
export function readFolder(folder: string): InstanceClass {
  const files = readdirSync(folder).filter((file) => file.endsWith(".txt"));
  const known = readBounds(join(folder, "bounds.tsv"));
  return {
    name: basename(folder),
    count: files.length,
    make(n) {
      const name = files[n % files.length]!;
      const numbers = readFileSync(join(folder, name), "utf8").split(/\s+/).filter(Boolean).map(Number);
      const [count, stick, ...rest] = numbers as [number, number, ...number[]];
      const pieces = Array.from({ length: count }, (_, k) => ({
        length: rest[2 * k] ?? NaN,
        quantity: rest[2 * k + 1] ?? 1,
      }));
      return { name, request: { pieces, stocks: [{ length: stick }] }, known: known.get(name.replace(/\.txt$/, "")) };
    },
  };
}

function readBounds(file: string): Map<string, number> {
  const known = new Map<string, number>();
  if (!existsSync(file)) return known;
  for (const line of readFileSync(file, "utf8").split("\n")) {
    const [name = "", lower, upper] = line.split("\t");
    if (lower !== undefined && lower === upper) known.set(name.replace(/\.txt$/, ""), Number(lower));
  }
  return known;
}
