/**
 * Formulas as a workbook file spells them. In a file an add-in's function stands as `_xldudf_CONDUIT_JOB_SCHEDULE(`,
 * every dot an underscore, and a built-in that is younger than the file format as `_xlfn.SORT(`.
 */

/** Built-ins that a file marks as newer than its format, and the mark of each (ECMA-376 has none of them). */
const marks: Readonly<Record<string, string>> = {
  ...Object.fromEntries(
    [
      "CONCAT IFS SWITCH TEXTJOIN MAXIFS MINIFS XLOOKUP XMATCH UNIQUE SORTBY SEQUENCE LET LAMBDA MAP REDUCE SCAN BYROW",
      "BYCOL MAKEARRAY VSTACK HSTACK TOROW TOCOL WRAPROWS WRAPCOLS TAKE DROP EXPAND CHOOSEROWS CHOOSECOLS TEXTSPLIT",
      "TEXTBEFORE TEXTAFTER ISOMITTED",
    ]
      .join(" ")
      .split(" ")
      .map((name) => [name, "_xlfn."]),
  ),
  FILTER: "_xlfn._xlws.",
  SORT: "_xlfn._xlws.",
};

const prefix = "_xldudf_";

/** A text in quotes, a quoted sheet name, a structured reference's brackets, or a name before a parenthesis. */
const parts = /"(?:[^"]|"")*"|'(?:[^']|'')*'|\[[^\]]*\]|([A-Za-z_][\w.]*)(?=\()/g;

function eachFunction(formula: string, spell: (name: string) => string): string {
  return formula.replace(parts, (whole: string, name?: string) => (name === undefined ? whole : spell(name)));
}

/** A formula for the file: without its "=", functions spelled as files spell them. */
export function toFileFormula(formula: string, namespace: string): string {
  return eachFunction(formula.replace(/^=/, ""), (name) => {
    const upper = name.toUpperCase();
    if (upper.startsWith(`${namespace}.`)) return prefix + upper.replace(/\./g, "_");
    return (marks[upper] ?? "") + name;
  });
}

/**
 * A formula from a file, with its "=".
 * @param functions the functions at hand, with their namespace: "CONDUIT.JOB.SCHEDULE"
 */
export function fromFileFormula(formula: string, functions: readonly string[]): string {
  const byFileName = new Map(functions.map((name) => [(prefix + name.replace(/\./g, "_")).toUpperCase(), name]));
  const plain = eachFunction(
    formula,
    (name) => byFileName.get(name.toUpperCase()) ?? name.replace(/^_xlfn\.(_xlws\.)?/, ""),
  );
  return `=${plain}`;
}
