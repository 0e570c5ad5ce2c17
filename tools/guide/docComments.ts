import { readdirSync, readFileSync } from "node:fs";
import { basename, join } from "node:path";
import ts from "typescript";

export interface DocArgument {
  readonly name: string;
  readonly optional: boolean;
  /** Unit in square brackets at the start of its text, or nothing. */
  readonly unit: string;
  readonly text: string;
}

/** One worksheet function as its doc comment in functions/ tells it. */
export interface DocFunction {
  readonly id: string;
  /** Name of the file without its ending: the family the function belongs to. */
  readonly family: string;
  readonly summary: string;
  readonly remarks: string;
  readonly example: string;
  /** What stands behind `//=>`. */
  readonly answer: string;
  readonly source: string;
  readonly arguments: readonly DocArgument[];
  readonly returns: string;
}

/** Every worksheet function of a folder of sources, in the order of files and of their text. */
export function readDocComments(folder: string): DocFunction[] {
  return readdirSync(folder, { recursive: true, encoding: "utf8" })
    .filter((name) => name.endsWith(".ts"))
    .sort()
    .flatMap((name) => readSource(basename(name, ".ts"), readFileSync(join(folder, name), "utf8")));
}

/** The worksheet functions of one source text. */
export function readSource(family: string, text: string): DocFunction[] {
  const source = ts.createSourceFile(`${family}.ts`, text, ts.ScriptTarget.Latest, true);
  return source.statements.filter(ts.isFunctionDeclaration).flatMap((declaration) => {
    const tags = ts.getJSDocTags(declaration);
    const id = tags.find((tag) => tag.tagName.text === "customfunction");
    const comment = ts.getJSDocCommentsAndTags(declaration).find(ts.isJSDoc);
    if (!id || !comment) return [];
    return [readFunction(wordsOf(id.comment), family, wordsOf(comment.comment), tags)];
  });
}

function readFunction(id: string, family: string, comment: string, tags: readonly ts.JSDocTag[]): DocFunction {
  const lines = comment.split("\n").map((line) => line.trim());
  const labeled = (label: string): string => {
    const line = lines.find((each) => each.startsWith(`${label}: `));
    if (line === undefined) throw new Error(`${id}: its comment has no line "${label}: …".`);
    return line.slice(label.length + 2);
  };
  const [formula, answer] = labeled("Example").split(" //=> ");
  if (!formula?.startsWith(`=CONDUIT.${id}(`) || !answer) {
    throw new Error(`${id}: its example must read "=CONDUIT.${id}(…) //=> answer".`);
  }
  const returns = tags.find(ts.isJSDocReturnTag);
  if (!returns) throw new Error(`${id}: its comment has no @returns.`);
  const words = lines.slice(0, lines.indexOf(`Example: ${labeled("Example")}`));
  const gap = words.indexOf("");
  return {
    id,
    family,
    summary: words.slice(0, gap < 0 ? undefined : gap).join(" "),
    remarks: (gap < 0 ? [] : words.slice(gap)).join(" ").trim(),
    example: formula,
    answer,
    source: labeled("Source"),
    arguments: tags.filter(ts.isJSDocParameterTag).map(readArgument),
    returns: wordsOf(returns.comment),
  };
}

function readArgument(tag: ts.JSDocParameterTag): DocArgument {
  const text = wordsOf(tag.comment);
  const unit = /^\[([^\]]+)\]\s*/.exec(text);
  return {
    name: tag.name.getText(),
    optional: tag.isBracketed,
    unit: unit?.[1] ?? "",
    text: unit ? text.slice(unit[0].length) : text,
  };
}

const wordsOf = (comment: Parameters<typeof ts.getTextOfJSDocComment>[0]): string =>
  (ts.getTextOfJSDocComment(comment) ?? "").trim();
