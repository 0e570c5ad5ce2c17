import type { Book, DescribedFunctions } from "../../engine";
import type { Replace } from "../startAgain";
import type { BookStore, SavedBook } from "../keep/store";

/** The open workbook and what surrounds it. */
export interface Desk {
  book: Book;
  readonly name: string;
  functions: DescribedFunctions;
  /** The browser's store; null when this tab may not store anything. */
  store: BookStore | null;
  current: () => SavedBook;
  replace: Replace;
  /** Shows the pane where it reads drawings. */
  showDrawings: () => Promise<void>;
}
