import { join } from "node:path";
import type { Scene } from "../../src/drawing/paper/scene";
import { isAnswer, printedDecimals } from "./answers";
import { readDocComments, type DocFunction } from "./docComments";
import { evaluateGuide, isError, type GuideFormula, type ResultCell } from "./evaluate";
import { FAMILIES } from "./pages";
import type { Family, PageNotes } from "./pages/types";

/** A formula with what the engine gave for it. */
export interface Shown extends GuideFormula {
  readonly rows: readonly (readonly ResultCell[])[];
  /** Decimals to print. */
  readonly decimals: number;
}

/** One function's page, every result computed. */
export interface GuidePage {
  readonly doc: DocFunction;
  readonly notes: PageNotes;
  readonly family: Family;
  readonly example: Shown;
  readonly more: readonly Shown[];
  readonly refused: readonly Shown[];
  readonly scene?: Scene;
}

/**
 * Reads the doc comments, computes every formula of the guide with the built functions, and puts the pages together.
 *
 * @param root folder of the repository, its functions and tools built
 * @throws Error that tells every example whose answer is not what the comment says, and everything else amiss
 */
export async function assembleGuide(root: string): Promise<GuidePage[]> {
  const entries = entriesOf(readDocComments(join(root, "functions")));
  const formulas = entries.flatMap(formulasOf);
  const results = await evaluateGuide(join(root, "dist"), formulas);
  let next = 0;
  const shown = (formula: GuideFormula, decimals: number): Shown => ({ ...formula, rows: results[next++]!, decimals });
  const pages = entries.map((entry): GuidePage => {
    const decimals = printedDecimals(entry.doc.answer);
    const [example, ...others] = formulasOf(entry).map((formula) => shown(formula, decimals));
    const count = entry.notes.more?.length ?? 0;
    const scene = entry.notes.figure?.draw();
    return {
      ...entry,
      example: example!,
      more: others.slice(0, count),
      refused: others.slice(count),
      ...(scene && { scene }),
    };
  });
  const faults = pages.flatMap(faultsOf);
  if (faults.length > 0) throw new Error(faults.join("\n"));
  return pages;
}

type Entry = Pick<GuidePage, "doc" | "notes" | "family">;

/** Every function with its notes, in the order of the families. */
function entriesOf(docs: readonly DocFunction[]): Entry[] {
  const homeless = docs.filter((doc) => !FAMILIES.some(({ file, pages }) => file === doc.family && doc.id in pages));
  const gone = FAMILIES.flatMap(({ file, pages }) =>
    Object.keys(pages).filter((id) => !docs.some((doc) => doc.family === file && doc.id === id)),
  );
  const faults = [
    ...homeless.map(({ id, family }) => `${id}: write its notes in tools/guide/pages/${family}.ts.`),
    ...gone.map((id) => `${id}: tools/guide/pages has notes on it, functions/ has no such function in that file.`),
  ];
  if (faults.length > 0) throw new Error(faults.join("\n"));
  return FAMILIES.flatMap((family) =>
    docs.filter((doc) => doc.family === family.file).map((doc) => ({ doc, family, notes: family.pages[doc.id]! })),
  );
}

const formulasOf = ({ doc, notes }: Entry): GuideFormula[] => [
  { formula: doc.example, ...(notes.cells && { cells: notes.cells }) },
  ...[...(notes.more ?? []), ...notes.refused].map((formula) => ({ formula })),
];

function faultsOf({ doc, example, more, refused }: GuidePage): string[] {
  const first = ({ rows }: Shown): ResultCell | undefined => rows[0]?.[0];
  const told = (cell: ResultCell | undefined): string => JSON.stringify(cell);
  return [
    ...(isAnswer(doc.answer, example.rows)
      ? []
      : [`${doc.id}: ${example.formula} gives ${JSON.stringify(example.rows[0])}, its comment says ${doc.answer}.`]),
    ...more
      .filter((each) => isError(first(each)))
      .map((each) => `${doc.id}: ${each.formula} gives ${told(first(each))}; it should give a result.`),
    ...refused
      .filter((each) => !isError(first(each)))
      .map((each) => `${doc.id}: ${each.formula} gives ${told(first(each))}; it should be refused.`),
    ...(refused.length > 0 ? [] : [`${doc.id}: its notes name no formula that is refused.`]),
  ];
}
