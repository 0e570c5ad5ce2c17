import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";
import { columnLetters } from "../../../taskpane/workbook/address";
import { blockAddress } from "../address";
import { toFileFormula } from "./fileFormula";
import { ownSizes } from "./besides/pictures";
import type { ContentTable, SheetContent } from "../content/sheetContent";

/**
 * Adds to a written file what the file library leaves out: errors cached as errors, formulas that a table repeats in
 * new rows, formats for rows to come, pictures of their own size, and no warning triangles on sizes, which are numbers kept as text.
 */
export function finishFile(file: Uint8Array, sheets: readonly SheetContent[], namespace: string): Uint8Array {
  const parts = unzipSync(file);
  const edit = (path: string, change: (xml: string) => string) => {
    const part = parts[path];
    if (!part) throw new Error(`The written workbook has no ${path}.`);
    parts[path] = strToU8(change(strFromU8(part)));
  };
  edit("xl/workbook.xml", (xml) => quoteSheetNames(keepResults(xml)));
  edit("docProps/app.xml", trustedResults);
  let tableNumber = 0;
  sheets.forEach((sheet, index) => {
    edit(`xl/worksheets/sheet${index + 1}.xml`, (xml) =>
      ownHeights(withoutWarnings(formatWholeColumns(errorsAsErrors(xml), sheet), sheet), sheet),
    );
    const { pictures = [] } = sheet;
    if (pictures.length > 0) edit(`xl/drawings/drawing${index + 1}.xml`, (xml) => ownSizes(xml, pictures));
    for (const table of sheet.tables) {
      tableNumber += 1;
      edit(`xl/tables/table${tableNumber}.xml`, (xml) => repeatFormulas(xml, sheet, table, namespace));
    }
  });
  return zipSync(parts, { level: 6 });
}

/**
 * Where the add-in is not installed, a recalculation turns its results into #NAME?. So Excel is not asked for one on
 * opening, and the file names a calculation engine new enough not to start one by itself (191029: Excel 2019 and later
 * write this number; from memory).
 */
function keepResults(xml: string): string {
  return xml.replace(/<calcPr [^>]*\/>/, '<calcPr calcId="191029"/>');
}

/** LibreOffice believes a text kept beside a formula only in files that name this application. */
function trustedResults(xml: string): string {
  return xml.replace(/<Application>[^<]*</, "<Application>Microsoft Excel<");
}

/** The file library writes a name such as `Bend counts!$1:$1` without the quotes that it needs. */
function quoteSheetNames(xml: string): string {
  return xml.replace(/(<definedName [^>]*>)([^'!<]*[^'!<\w][^'!<]*)!/g, "$1'$2'!");
}

/**
 * Heights are what the words take in the usual font. A program that has another one measures anew, unless it is told
 * that somebody chose them.
 */
function ownHeights(xml: string, sheet: SheetContent): string {
  return sheet.rowHeights ? xml : xml.replace(/(<row [^>]*?) customHeight="1"/g, "$1");
}

/** Gives a table's columns the format of their first row all the way down, so that rows to come have it too. */
function formatWholeColumns(xml: string, sheet: SheetContent): string {
  if (sheet.tables.length === 0) return xml;
  return xml.replace(/<col min="(\d+)" max="\1" /g, (whole, column: string) => {
    const first = new RegExp(`<c r="${columnLetters(Number(column) - 1)}2"[^>]*? s="(\\d+)"`).exec(xml);
    return first ? `${whole}style="${first[1]}" ` : whole;
  });
}

/** The errors that the file format knows (ECMA-376 part 1, 18.18.11 ST_CellType and its values). */
const errorCell =
  /(<c [^>]*?)t="str"([^>]*>(?:<f[^>]*>[^<]*<\/f>)<v>(?:#NULL!|#DIV\/0!|#VALUE!|#REF!|#NAME\?|#NUM!|#N\/A)<\/v>)/g;

function errorsAsErrors(xml: string): string {
  return xml.replace(errorCell, '$1t="e"$2');
}

function withoutWarnings(xml: string, sheet: SheetContent): string {
  const rows = sheet.cells.length;
  const columns = Math.max(0, ...sheet.cells.map((row) => row.length));
  if (rows === 0 || columns === 0) return xml;
  const all = blockAddress({ startRow: 0, endRow: rows - 1, startColumn: 0, endColumn: columns - 1 });
  const ignored = `<ignoredErrors><ignoredError sqref="${all}" numberStoredAsText="1"/></ignoredErrors>`;
  return xml.replace(/(?=<drawing |<legacyDrawing |<picture |<tableParts |<extLst>|<\/worksheet>)/, ignored);
}

/** Excel fills a new row's formula only where the table itself names it. */
function repeatFormulas(xml: string, sheet: SheetContent, table: ContentTable, namespace: string): string {
  let column = table.range.startColumn - 1;
  return xml.replace(/<tableColumn ([^>]*?)\/>/g, (whole, attributes: string) => {
    column += 1;
    const formula = sheet.cells[table.range.startRow + 1]?.[column]?.formula;
    if (!formula?.includes("[#This Row]")) return whole;
    const text = escapeXml(toFileFormula(formula, namespace));
    return `<tableColumn ${attributes}><calculatedColumnFormula>${text}</calculatedColumnFormula></tableColumn>`;
  });
}

function escapeXml(text: string): string {
  return text.replace(/&/g, "&amp;").replace(/</g, "&lt;").replace(/>/g, "&gt;");
}
