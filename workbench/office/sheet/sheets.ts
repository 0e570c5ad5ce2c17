import type { Book, Sheet } from "../../engine";
import { invalidArgument, OfficeError } from "../base/officeError";

/** Room of a new sheet: the grid's own is narrower than a schedule. */
const size = { rowCount: 2000, columnCount: 40 };

/** Adds a sheet and leaves the one at the front where it is. */
export function addSheet(book: Book, name = nextName(book)): Sheet {
  checkSheetName(book, name);
  const front = book.activeSheet();
  book.native.insertSheet(name, { sheet: size });
  front.activate();
  return book.sheet(name);
}

/** Refuses a name that Excel refuses. */
export function checkSheetName(book: Book, name: string): void {
  if (name === "" || name.length > 31 || /[[\]:*?/\\]|^'|'$/.test(name))
    throw invalidArgument(`"${name}" names no worksheet.`);
  if (book.findSheet(name)) throw new OfficeError("ItemAlreadyExists", `There is a worksheet named ${name} already.`);
}

function nextName(book: Book): string {
  for (let number = book.sheets().length + 1; ; number++) {
    if (!book.findSheet(`Sheet${number}`)) return `Sheet${number}`;
  }
}
