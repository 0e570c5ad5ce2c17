import { type IStyleData, WrapStrategy } from "@univerjs/core";
import { ClientObject, type Readers } from "../base/clientObject";
import { whole } from "../base/whole";
import type { Lookup, Requests } from "../base/requests";
import type { Area } from "./place";

/** The grid's pixels in a point. */
const PIXELS = 96 / 72;

/** Several ranges of one sheet, so far as their looks go: they change together. */
class RangeAreasPart extends ClientObject<Area[]> implements Pick<Excel.RangeAreas, "format"> {
  protected override readonly readers: Readers = {};

  get format(): Excel.RangeFormat {
    const finding: Lookup<Area[]> = { find: () => this.target, what: "a format" };
    return this.part("format", () =>
      whole<Excel.RangeFormat>(new AreasFormatPart(this.requests, finding), "RangeFormat"),
    );
  }
}

class AreasFormatPart
  extends ClientObject<Area[]>
  implements Pick<Excel.RangeFormat, "font" | "rowHeight" | "wrapText">
{
  protected override readonly readers: Readers = {};

  get wrapText(): boolean {
    return this.loaded("wrapText");
  }
  set wrapText(wrap: boolean) {
    const tb = wrap ? WrapStrategy.WRAP : WrapStrategy.OVERFLOW;
    this.change("wrapText", wrap, (areas) => restyle(areas, { tb }));
  }

  /** In points. */
  get rowHeight(): number {
    return this.loaded("rowHeight");
  }
  set rowHeight(height: number) {
    this.change("rowHeight", height, (areas) => {
      for (const { sheet, cells } of areas)
        sheet.native.setRowHeights(cells.place.row, cells.place.rows, height * PIXELS);
    });
  }

  get font(): Excel.RangeFont {
    const finding: Lookup<Area[]> = { find: () => this.target, what: "a font" };
    return this.part("font", () => whole<Excel.RangeFont>(new AreasFontPart(this.requests, finding), "RangeFont"));
  }
}

class AreasFontPart extends ClientObject<Area[]> implements Pick<Excel.RangeFont, "bold" | "size"> {
  protected override readonly readers: Readers = {};

  get bold(): boolean {
    return this.loaded("bold");
  }
  set bold(bold: boolean) {
    this.change("bold", bold, (areas) => restyle(areas, { bl: bold ? 1 : 0 }));
  }

  /** In points. */
  get size(): number {
    return this.loaded("size");
  }
  set size(size: number) {
    this.change("size", size, (areas) => restyle(areas, { fs: size }));
  }
}

/** One writing for all areas: each costs the grid as much as many cells. */
function restyle(areas: readonly Area[], change: IStyleData): void {
  const places = areas.map(({ cells }) => cells.place);
  const [top, left] = [Math.min(...places.map(({ row }) => row)), Math.min(...places.map(({ column }) => column))];
  const rows = Math.max(...places.map((place) => place.row + place.rows)) - top;
  const columns = Math.max(...places.map((place) => place.column + place.columns)) - left;
  const looks = Array.from({ length: rows }, () => Array.from({ length: columns }, () => ({})));
  for (const { row, column, rows: high, columns: wide } of places)
    for (let at = row - top; at < row - top + high; at++)
      looks[at]!.fill({ s: change }, column - left, column - left + wide);
  areas[0]!.sheet.cells(top, left, rows, columns).native.setValues(looks);
}

export const rangeAreasOf = (requests: Requests, find: () => Area[]): Excel.RangeAreas =>
  whole<Excel.RangeAreas>(new RangeAreasPart(requests, { find, what: "ranges" }), "RangeAreas");
