import {
  BooleanNumber,
  BorderStyleTypes,
  HorizontalAlign,
  type IStyleData,
  type Nullable,
  VerticalAlign,
  WrapStrategy,
} from "@univerjs/core";
import type { CellStyle } from "hucre/xlsx";
import { AIR, type Look } from "../../../taskpane/workbook/design/look";

const toAlign = { left: HorizontalAlign.LEFT, center: HorizontalAlign.CENTER, right: HorizontalAlign.RIGHT };
const aligns = ["left", "center", "right"] as const;

/**
 * A workbook's letters where nothing else is said; their height in points. Widths of columns are counted in its digits, so
 * it has to be one that every system has, or has another of the same measure for.
 */
export const usualFont = { name: "Arial", size: 11 };
/** Width of a digit in it [px]. */
export const DIGIT = 8;

/** The grid's style as a look; undefined for a plain one. */
export function lookOfStyle(style: Nullable<IStyleData>): Look | undefined {
  if (!style) return undefined;
  return onlyGiven({
    format: style.n?.pattern,
    bold: style.bl === BooleanNumber.TRUE || undefined,
    italic: style.it === BooleanNumber.TRUE || undefined,
    wrap: style.tb === WrapStrategy.WRAP || undefined,
    align: aligns.find((name) => toAlign[name] === style.ht),
    size: style.fs ?? undefined,
    middle: style.vt === VerticalAlign.MIDDLE || undefined,
    underline: style.bd?.b ? true : undefined,
    color: hex(style.cl?.rgb),
    fill: hex(style.bg?.rgb),
  });
}

export function styleOfLook(look: Look): IStyleData {
  return {
    vt: look.middle ? VerticalAlign.MIDDLE : VerticalAlign.TOP,
    ...(look.format && { n: { pattern: look.format } }),
    ...(look.bold && { bl: BooleanNumber.TRUE }),
    ...(look.italic && { it: BooleanNumber.TRUE }),
    ...(look.wrap !== undefined && { tb: look.wrap ? WrapStrategy.WRAP : WrapStrategy.OVERFLOW }),
    ...(look.align && { ht: toAlign[look.align] }),
    ...(look.align === "right" && { pd: { r: AIR } }),
    ...(look.size && { fs: look.size }),
    ...(look.underline && { bd: { b: { s: BorderStyleTypes.THIN, cl: { rgb: "#000000" } } } }),
    ...(look.color && { cl: { rgb: `#${look.color}` } }),
    ...(look.fill && { bg: { rgb: `#${look.fill}` } }),
  };
}

/** The look as the file library writes it. */
export function fileStyle(look: Look): CellStyle {
  return {
    ...(look.format && { numFmt: look.format }),
    font: {
      ...usualFont,
      ...(look.bold && { bold: true }),
      ...(look.italic && { italic: true }),
      ...(look.size && { size: look.size }),
      ...(look.color && { color: { rgb: look.color } }),
    },
    ...(look.underline && { border: { bottom: { style: "thin", color: { rgb: "000000" } } } }),
    ...(look.fill && { fill: { type: "pattern", pattern: "solid", fgColor: { rgb: look.fill } } }),
    alignment: {
      vertical: look.middle ? "center" : "top",
      ...(look.align && { horizontal: look.align }),
      ...(look.align === "right" && { indent: 1 }),
      ...(look.wrap && { wrapText: true }),
    },
  };
}

export function lookOfFile(style: CellStyle | undefined): Look | undefined {
  if (!style) return undefined;
  const align = style.alignment?.horizontal;
  return onlyGiven({
    format: style.numFmt === "General" ? undefined : style.numFmt,
    bold: style.font?.bold || undefined,
    italic: style.font?.italic || undefined,
    wrap: style.alignment?.wrapText || undefined,
    align: aligns.find((name) => name === align),
    size: style.font?.size === usualFont.size ? undefined : style.font?.size,
    middle: style.alignment?.vertical === "center" || undefined,
    underline: style.border?.bottom?.style === "thin" || undefined,
    color: hex(style.font?.color?.rgb),
    fill: style.fill?.type === "pattern" && style.fill.pattern === "solid" ? hex(style.fill.fgColor?.rgb) : undefined,
  });
}

/** RRGGBB of "#rrggbb", "RRGGBB" or "AARRGGBB"; undefined for a color told otherwise. */
function hex(color: Nullable<string>): string | undefined {
  return /^#?(?:[0-9a-f]{2})?([0-9a-f]{6})$/i.exec(color ?? "")?.[1]?.toUpperCase();
}

function onlyGiven(look: Look): Look | undefined {
  const given = Object.entries(look).filter(([, value]) => value !== undefined);
  return given.length > 0 ? (Object.fromEntries(given) as Look) : undefined;
}
