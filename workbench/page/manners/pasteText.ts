import type { Injector } from "@univerjs/core";
import { ISheetClipboardService } from "@univerjs/preset-sheets-core";

/**
 * Rows of plain text come in as rows and columns, each cell as it was written, from the keyboard and from the menu. By
 * itself the grid drops empty cells at the beginning, reads `<` as markup, and from the menu puts all rows into one cell.
 */
export function pasteTextAsCells(services: Injector): void {
  const clipboard = services.get(ISheetClipboardService);
  const byKeys = clipboard.legacyPaste.bind(clipboard);
  const byMenu = clipboard.paste.bind(clipboard);

  const legacyPaste: typeof byKeys = (html, text, files) =>
    !html && !files?.length && text && isRows(text) ? byKeys(asTable(text), text) : byKeys(html, text, files);
  const paste: typeof byMenu = async (item, type) => {
    const plain = item.types.includes("text/plain") && !item.types.includes("text/html");
    const text = plain ? await (await item.getType("text/plain")).text() : "";
    return isRows(text) ? byKeys(asTable(text), text) : byMenu(item, type);
  };

  Object.defineProperties(clipboard, {
    legacyPaste: { value: legacyPaste, configurable: true, writable: true },
    paste: { value: paste, configurable: true, writable: true },
  });
}

const isRows = (text: string): boolean => /[\t\n]/.test(text);

/** Rows of cells as a spreadsheet puts them on the clipboard: parted by tabs, quoted where a cell holds a line break. */
export function cellsOf(text: string): string[][] {
  const rows: string[][] = [[]];
  const cell = /(?:"((?:[^"]|"")*)"(?=\t|\r?\n|$)|([^\t\r\n]*))(\t|\r?\n|$)/gy;
  const end = text.replace(/\r?\n$/, "");
  for (let found = cell.exec(end); found; found = cell.exec(end)) {
    const [, quoted, plain = "", after] = found;
    rows.at(-1)!.push(quoted === undefined ? plain : quoted.replace(/""/g, '"'));
    if (after === "") break;
    if (after !== "\t") rows.push([]);
  }
  return rows;
}

function asTable(text: string): string {
  const table = document.createElement("table");
  for (const row of cellsOf(text)) {
    const line = table.insertRow();
    for (const cell of row) line.insertCell().textContent = cell;
  }
  return table.outerHTML;
}
