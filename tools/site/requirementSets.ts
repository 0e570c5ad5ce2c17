import { readFileSync } from "node:fs";
import { join } from "node:path";
import ts from "typescript";

/** One member of Office.js that the code uses, and the requirement set its documentation names. */
export interface UsedApi {
  api: string;
  set: string;
  version: string;
  /** Where it is used first: file and line. */
  at: string;
  /** Only its type is written: nothing is called, a value of that shape is made. */
  shapeOnly: boolean;
}

/** What the code uses, and the sets that it asks for at run time before it goes on. */
export interface CodeSets {
  apis: UsedApi[];
  asked: Map<string, string>;
}

/** Custom functions have types of their own, which name no sets: what each needs, by Microsoft's history of the sets. */
const inFunctions: Readonly<Record<string, [set: string, version: string]>> = {
  "CustomFunctions.Error": ["CustomFunctionsRuntime", "1.2"],
  "CustomFunctions.ErrorCode": ["CustomFunctionsRuntime", "1.3"],
};

/** Every member of Office.js that the pane and the functions use. Reads the types of the whole program once. */
export function codeSets(root: string): CodeSets {
  const { config } = ts.readConfigFile(join(root, "tsconfig.json"), ts.sys.readFile);
  const { fileNames, options } = ts.parseJsonConfigFileContent(config, ts.sys, root);
  const speaksOffice = /\b(Excel|Office|OfficeExtension|CustomFunctions)\b|\bbatch\(/;
  const ours = fileNames.filter(
    (name) =>
      /^\/(taskpane|functions)\//.test(name.slice(root.length)) && speaksOffice.test(readFileSync(name, "utf8")),
  );
  const program = ts.createProgram(ours, options);
  const checker = program.getTypeChecker();
  const used = new Map<string, UsedApi>();
  const asked = new Map<string, string>();
  const note = (node: ts.Node, api: string, set: string, version: string) => {
    const file = node.getSourceFile();
    const { line } = file.getLineAndCharacterOfPosition(node.getStart());
    const at = `${file.fileName.slice(root.length + 1)}:${line + 1}`;
    const key = `${api} ${set}`;
    const shapeOnly = isInType(node);
    const before = used.get(key);
    if (!before || (before.shapeOnly && !shapeOnly)) used.set(key, { api, set, version, at, shapeOnly });
  };
  const visit = (node: ts.Node): void => {
    if (ts.isIdentifier(node)) {
      const known = inFunctions[node.parent.getText()];
      if (known && ts.isPropertyAccessExpression(node.parent)) note(node, node.parent.getText(), ...known);
      for (const [api, set, version] of setsOf(checker.getSymbolAtLocation(node))) note(node, api, set, version);
    }
    // A pair in a list of needed sets, or the arguments of the question itself.
    const texts = listOf(node)?.map((each) => (ts.isStringLiteral(each) ? each.text : ""));
    if (texts?.length === 2 && /^(\w+Api|\w+Runtime)$/.test(texts[0]!)) {
      const known = asked.get(texts[0]!);
      if (!known || compareVersions(texts[1]!, known) > 0) asked.set(texts[0]!, texts[1]!);
    }
    ts.forEachChild(node, visit);
  };
  for (const file of program.getSourceFiles()) if (ours.includes(file.fileName)) visit(file);
  const apis = [...used.values()].sort((a, b) => (`${a.set} ${a.api}` < `${b.set} ${b.api}` ? -1 : 1));
  return { apis, asked };
}

const listOf = (node: ts.Node): readonly ts.Expression[] | undefined =>
  ts.isArrayLiteralExpression(node)
    ? node.elements
    : ts.isCallExpression(node) && /\bisSetSupported$/.test(node.expression.getText())
      ? node.arguments
      : undefined;

/** True inside a type: types are gone when the code runs. */
const isInType = (node: ts.Node): boolean =>
  ts.isTypeNode(node) || (!ts.isStatement(node) && !ts.isSourceFile(node) && isInType(node.parent));

/** The sets that the documentation of an Office.js symbol names: `[Api set: ExcelApi 1.9]`. */
function setsOf(symbol: ts.Symbol | undefined): [api: string, set: string, version: string][] {
  const declarations = symbol?.declarations?.filter((node) => /office-js/.test(node.getSourceFile().fileName)) ?? [];
  const found = declarations.flatMap((node) => {
    const comment = node.getFullText().slice(0, node.getLeadingTriviaWidth());
    const owner =
      node.parent && "name" in node.parent ? (node.parent.name as ts.Node | undefined)?.getText() : undefined;
    return [...comment.matchAll(/Api set:\s*(\w+)\s+([\d.]+)/gi)].map(([, set, version]): [string, string, string] => [
      `${owner ?? ""}.${symbol!.name}`.replace(/^\./, ""),
      set!,
      version!,
    ]);
  });
  // Overloads: the oldest is enough for the member to be there.
  return found.sort((one, other) => compareVersions(one[2], other[2])).slice(0, 1);
}

/** Below 0 when the first version is older: 1.9 is older than 1.12. */
export function compareVersions(one: string, other: string): number {
  const [a, b] = [one, other].map((version) => version.split(".").map(Number));
  return a![0]! - b![0]! || (a![1] ?? 0) - (b![1] ?? 0);
}

/** The sets a manifest asks for, and the version of each. */
export function manifestSets(manifest: string): Map<string, string> {
  const sets = [...manifest.matchAll(/<Set Name="(\w+)" MinVersion="([\d.]+)"/g)];
  return new Map(sets.map(([, name, version]) => [name!, version!]));
}

/** The members in use that no set in the manifest covers, in words. */
export function uncovered(apis: readonly UsedApi[], sets: ReadonlyMap<string, string>): string[] {
  return apis.flatMap(({ api, set, version, at }) => {
    const asked = sets.get(set);
    if (asked !== undefined && compareVersions(version, asked) <= 0) return [];
    return [`${api} (${at}) needs ${set} ${version}; the manifest asks for ${asked ?? "none of it"}.`];
  });
}
