import type { Scene } from "../../../src/drawing/paper/scene";
import type { GuideCell } from "../tables";

export interface Figure {
  readonly draw: () => Scene;
  /** A sentence under the figure. */
  readonly caption: string;
}

/** What a function's page shows besides its doc comment. */
export interface PageNotes {
  /** The formula, a line each; the letters are those of GLOSSARY or are told in the line. */
  readonly formula?: readonly string[];
  readonly figure?: Figure;
  /** Cells that the example reads on its own sheet, from A1. */
  readonly cells?: readonly (readonly GuideCell[])[];
  /** Further formulas to show with their results. */
  readonly more?: readonly string[];
  /** Formulas that are refused: the page shows what each one answers. */
  readonly refused: readonly string[];
}

/** A family of functions: a file of functions/. */
export interface Family {
  /** Name of the file, without its ending. */
  readonly file: string;
  readonly title: string;
  readonly about: string;
  readonly pages: Readonly<Record<string, PageNotes>>;
}
