import { readdirSync, readFileSync } from "node:fs";
import { basename, join } from "node:path";

/** One worksheet function as its doc comment tells it. */
export interface DocExample {
  readonly file: string;
  readonly id: string;
  /** The exported function's name. */
  readonly name: string;
  readonly args: unknown[];
  /** What stands behind `//=>`. */
  readonly result: string;
}

const FOLDER = join(__dirname, "../../functions");
const FILES = readdirSync(FOLDER, { recursive: true, encoding: "utf8" });
const COMMENT = /\/\*\*((?:(?!\*\/)[\s\S])*)\*\/\s*export function (\w+)/g;

/** The examples of the named files of functions/. An argument may be a number, text in quotes or an array in braces. */
export function docExamples(files: readonly string[]): DocExample[] {
  return files.flatMap((file) => {
    const found = FILES.find((each) => basename(each) === file);
    if (!found) throw new Error(`no room of functions/ has a ${file}`);
    const source = readFileSync(join(FOLDER, found), "utf8");
    return [...source.matchAll(COMMENT)].map(([, comment = "", name = ""]) => {
      const id = /@customfunction (\S+)/.exec(comment)?.[1];
      const example = /Example: =CONDUIT\.([\w.]+)\((.*)\) \/\/=> (.*)/.exec(comment);
      if (!id || !example) throw new Error(`functions/${file}: ${name} lacks an id or an example`);
      if (example[1] !== id) throw new Error(`functions/${file}: the example of ${id} calls ${example[1]}`);
      return { file, id, name, args: argumentsOf(example[2] ?? ""), result: (example[3] ?? "").trim() };
    });
  });
}

const argumentsOf = (text: string): unknown[] => {
  const json = text
    .replace(/"((?:[^"]|"")*)"/g, (_, inner: string) => JSON.stringify(inner.replace(/""/g, '"')))
    .replace(/\{([^}]*)\}/g, (_, inner: string) => `[[${inner.replace(/;/g, "],[")}]]`);
  return JSON.parse(`[${json}]`) as unknown[];
};
