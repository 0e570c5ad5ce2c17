import { HorizontalAlign, type IStyleData, VerticalAlign, WrapStrategy } from "@univerjs/core";
import { AIR } from "../../../taskpane/workbook/design/look";
import type { CellRange } from "../../engine";
import { ClientObject, type Readers } from "../base/clientObject";
import type { Area } from "./place";
import { restyleColumns } from "./columnStyle";
import { notImplemented } from "../base/officeError";
import type { Requests } from "../base/requests";
import { whole } from "../base/whole";

/** A column's width for so many characters [px]: a digit's width, the air beside the text and a heading's button, and the limits. */
const width = { character: 7.5, air: 34, least: 60, most: 420 };

/** The grid's pixels in a point. */
const pixels = 96 / 72;

type Members =
  | "autofitColumns"
  | "columnWidth"
  | "fill"
  | "font"
  | "horizontalAlignment"
  | "rowHeight"
  | "verticalAlignment"
  | "wrapText";

const HORIZONTAL: Readonly<Record<string, HorizontalAlign>> = {
  Left: HorizontalAlign.LEFT,
  Center: HorizontalAlign.CENTER,
  Right: HorizontalAlign.RIGHT,
};
const HORIZONTAL_WORDS = { Left: "left", Center: "center", Right: "normal" } as const;
const VERTICAL: Readonly<Record<string, VerticalAlign>> = { Top: VerticalAlign.TOP, Center: VerticalAlign.MIDDLE };

/** Changes a look of cells, or of the columns where those are whole. */
function restyle(area: Area, change: IStyleData, ofCells: (range: CellRange["native"]) => unknown): void {
  if (area.wholeColumns) restyleColumns(area, change);
  else ofCells(area.cells.native);
}

function aligned<T>(known: Readonly<Record<string, T>>, given: string): T {
  const found = known[given];
  if (found === undefined) throw notImplemented(`the alignment ${given}`);
  return found;
}

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
    this.change("wrapText", wrap, (area) =>
      restyle(area, { tb: wrap ? WrapStrategy.WRAP : WrapStrategy.OVERFLOW }, (range) => range.setWrap(wrap)),
    );
  }

  /** In points. */
  get rowHeight(): number {
    return this.loaded("rowHeight");
  }
  set rowHeight(height: number) {
    this.change("rowHeight", height, ({ sheet, cells }) => {
      sheet.native.setRowHeights(cells.place.row, cells.place.rows, height * pixels);
    });
  }

  get horizontalAlignment(): Excel.RangeFormat["horizontalAlignment"] {
    return this.loaded("horizontalAlignment");
  }
  set horizontalAlignment(align: Excel.RangeFormat["horizontalAlignment"]) {
    this.change("horizontalAlignment", align, (area) =>
      restyle(area, { ht: aligned(HORIZONTAL, align), ...(align === "Right" && { pd: { r: AIR } }) }, (range) =>
        range.setHorizontalAlignment(aligned(HORIZONTAL_WORDS, align)),
      ),
    );
  }

  get verticalAlignment(): Excel.RangeFormat["verticalAlignment"] {
    return this.loaded("verticalAlignment");
  }
  set verticalAlignment(align: Excel.RangeFormat["verticalAlignment"]) {
    this.change("verticalAlignment", align, (area) =>
      restyle(area, { vt: aligned(VERTICAL, align) }, (range) =>
        range.setVerticalAlignment(align === "Top" ? "top" : "middle"),
      ),
    );
  }

  get fill(): Excel.RangeFill {
    return this.part("fill", () =>
      whole<Excel.RangeFill>(
        new RangeFillPart(this.requests, { find: () => this.target, what: "a fill" }),
        "RangeFill",
      ),
    );
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

class RangeFillPart extends ClientObject<Area> implements Pick<Excel.RangeFill, "color"> {
  protected override readonly readers: Readers = {};

  get color(): string {
    return this.loaded("color");
  }
  set color(color: string) {
    this.change("color", color, (area) =>
      restyle(area, { bg: { rgb: color } }, (range) => range.setBackgroundColor(color)),
    );
  }
}

class RangeFontPart extends ClientObject<Area> implements Pick<Excel.RangeFont, "bold" | "color" | "size"> {
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
    this.change("bold", bold, (area) =>
      restyle(area, { bl: bold ? 1 : 0 }, (range) => range.setFontWeight(bold ? "bold" : "normal")),
    );
  }

  get color(): string {
    return this.loaded("color");
  }
  set color(color: string) {
    this.change("color", color, (area) => restyle(area, { cl: { rgb: color } }, (range) => range.setFontColor(color)));
  }

  /** In points. */
  get size(): number {
    return this.loaded("size");
  }
  set size(size: number) {
    this.change("size", size, (area) => restyle(area, { fs: size }, (range) => range.setFontSize(size)));
  }
}

/** The grid's size of letters where a cell says nothing [pt]. */
const usualSize = 11;

/** A look that all cells share; null where they differ, as in Excel. */
const same = <T>(looks: readonly T[]): T | null => (new Set(looks).size === 1 ? looks[0]! : null);

export const rangeFormatOf = (requests: Requests, find: () => Area): Excel.RangeFormat =>
  whole<Excel.RangeFormat>(new RangeFormatPart(requests, { find, what: "a format" }), "RangeFormat");
