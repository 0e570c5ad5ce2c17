import { ClientObject, type Readers } from "./clientObject";
import type { Area } from "./range";
import type { RequestContext } from "./requestContext";
import { whole } from "./whole";

/** A column's width for so many characters [px]: a digit's width, the air beside the text and a heading's button, and the limits. */
const width = { character: 7.5, air: 34, least: 60, most: 420 };

class RangeFormatPart extends ClientObject<Area> implements Pick<Excel.RangeFormat, "font" | "autofitColumns"> {
  protected override readonly readers: Readers = {};

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
      const { column, columns } = cells.place;
      const { texts } = cells;
      for (let at = 0; at < columns; at++) {
        const longest = Math.max(...texts.map((row) => String(row[at] ?? "").length));
        const wanted = longest * width.character + width.air;
        sheet.native.setColumnWidth(column + at, Math.min(Math.max(wanted, width.least), width.most));
      }
    });
  }
}

class RangeFontPart extends ClientObject<Area> implements Pick<Excel.RangeFont, "bold"> {
  protected override readonly readers: Readers = {
    // Null where some cells are bold and some are not.
    bold: () => {
      const cells = this.target.cells.native.getCellStyles().flat();
      const bold = new Set(cells.map((style) => style?.bold ?? false));
      return bold.size === 1 ? [...bold][0] : null;
    },
  };

  get bold(): boolean {
    return this.loaded("bold");
  }
  set bold(bold: boolean) {
    this.change("bold", bold, ({ cells }) => void cells.native.setFontWeight(bold ? "bold" : "normal"));
  }
}

export const rangeFormatOf = (requests: RequestContext, find: () => Area): Excel.RangeFormat =>
  whole<Excel.RangeFormat>(new RangeFormatPart(requests, { find, what: "a format" }), "RangeFormat");
