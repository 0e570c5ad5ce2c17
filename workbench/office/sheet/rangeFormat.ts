import { ClientObject, type Readers } from "../base/clientObject";
import type { Area } from "./place";
import type { Requests } from "../base/requests";
import { whole } from "../base/whole";

/** A column's width for so many characters [px]: a digit's width, the air beside the text and a heading's button, and the limits. */
const width = { character: 7.5, air: 34, least: 60, most: 420 };

/** The grid's pixels in a point. */
const pixels = 96 / 72;

type Members = "autofitColumns" | "columnWidth" | "font" | "wrapText";

class RangeFormatPart extends ClientObject<Area> implements Pick<Excel.RangeFormat, Members> {
  protected override readonly readers: Readers = {
    columnWidth: () => same(this.columns.map((column) => this.target.sheet.native.getColumnWidth(column) / pixels)),
    wrapText: () => same(this.target.cells.native.getWraps().flat()),
  };

  private get columns(): number[] {
    const { column, columns } = this.target.cells.place;
    return Array.from({ length: columns }, (_, at) => column + at);
  }

  /** In points. */
  get columnWidth(): number {
    return this.loaded("columnWidth");
  }
  set columnWidth(width: number) {
    this.change("columnWidth", width, ({ sheet }) => {
      for (const column of this.columns) sheet.native.setColumnWidth(column, width * pixels);
    });
  }

  get wrapText(): boolean {
    return this.loaded("wrapText");
  }
  set wrapText(wrap: boolean) {
    this.change("wrapText", wrap, ({ cells }) => void cells.native.setWrap(wrap));
  }

  get font(): Excel.RangeFont {
    return this.part("font", () =>
      whole<Excel.RangeFont>(
        new RangeFontPart(this.requests, { find: () => this.target, what: "a font" }),
        "RangeFont",
      ),
    );
  }

  autofitColumns(): void {
    this.requests.read(() => undefined);
    this.requests.write(() => {
      const { sheet, cells } = this.target;
      const { texts } = cells;
      this.columns.forEach((column, at) => {
        const longest = Math.max(...texts.map((row) => String(row[at] ?? "").length));
        const wanted = longest * width.character + width.air;
        sheet.native.setColumnWidth(column, Math.min(Math.max(wanted, width.least), width.most));
      });
    });
  }
}

class RangeFontPart extends ClientObject<Area> implements Pick<Excel.RangeFont, "bold" | "size"> {
  protected override readonly readers: Readers = {
    bold: () => same(this.styles.map((style) => style?.bold ?? false)),
    size: () => same(this.styles.map((style) => style?.fontSize ?? usualSize)),
  };

  private get styles() {
    return this.target.cells.native.getCellStyles().flat();
  }

  get bold(): boolean {
    return this.loaded("bold");
  }
  set bold(bold: boolean) {
    this.change("bold", bold, ({ cells }) => void cells.native.setFontWeight(bold ? "bold" : "normal"));
  }

  /** In points. */
  get size(): number {
    return this.loaded("size");
  }
  set size(size: number) {
    this.change("size", size, ({ cells }) => void cells.native.setFontSize(size));
  }
}

/** The grid's size of letters where a cell says nothing [pt]. */
const usualSize = 11;

/** A look that all cells share; null where they differ, as in Excel. */
const same = <T>(looks: readonly T[]): T | null => (new Set(looks).size === 1 ? looks[0]! : null);

export const rangeFormatOf = (requests: Requests, find: () => Area): Excel.RangeFormat =>
  whole<Excel.RangeFormat>(new RangeFormatPart(requests, { find, what: "a format" }), "RangeFormat");
