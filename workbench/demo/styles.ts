import { BooleanNumber, HorizontalAlign, type IStyleData, VerticalAlign, WrapStrategy } from "@univerjs/core";
import type { DemoColumn } from "./types";

/** The look of the demo's headings and cells. */
export const headings: Record<"input" | "result", IStyleData> = {
  input: heading("#1f4e5f", "#ffffff"),
  result: heading("#5b4a1f", "#ffffff"),
};

export const note: IStyleData = { cl: { rgb: "#6b7280" }, it: BooleanNumber.TRUE, vt: VerticalAlign.MIDDLE };

const aligns = { left: HorizontalAlign.LEFT, center: HorizontalAlign.CENTER, right: HorizontalAlign.RIGHT };

/** The style of a column's cells below the heading, or null for a plain one. */
export function columnStyle({ format, align, wrap }: DemoColumn): IStyleData | null {
  const style: IStyleData = {};
  if (format) style.n = { pattern: format };
  if (align) style.ht = aligns[align];
  if (wrap) style.tb = WrapStrategy.WRAP;
  return Object.keys(style).length > 0 ? { ...style, vt: VerticalAlign.MIDDLE } : null;
}

function heading(background: string, text: string): IStyleData {
  return {
    bl: BooleanNumber.TRUE,
    bg: { rgb: background },
    cl: { rgb: text },
    vt: VerticalAlign.MIDDLE,
    tb: WrapStrategy.WRAP,
  };
}
