import type { Look } from "../../workbook/design/look";
import { ifThere, knows } from "../ifThere";

/** Points to a pixel at 96 to the inch. */
export const POINTS = 72 / 96;
/** Two lines of a heading [pt]. */
export const HEADING_HEIGHT = 30;
/** Margins of a printed sheet [pt]. */
const MARGINS = { top: 36, bottom: 43, left: 29, right: 29, header: 22, footer: 22 };

const ALIGN = { left: "Left", center: "Center", right: "Right" } as const;

/** Gives cells a look. */
export function paint(range: Excel.Range, look: Look): void {
  // A single value is for all of the cells, though the types know tables of values only.
  if (look.format !== undefined) range.numberFormat = look.format as unknown as string[][];
  const { format } = range;
  if (look.bold) format.font.bold = true;
  if (look.color !== undefined) ifThere(() => (format.font.color = `#${look.color}`));
  if (look.fill !== undefined) ifThere(() => (format.fill.color = `#${look.fill}`));
  if (look.size !== undefined) ifThere(() => (format.font.size = look.size as number));
  if (look.wrap !== undefined) ifThere(() => (format.wrapText = look.wrap as boolean));
  if (look.align) ifThere(() => (format.horizontalAlignment = ALIGN[look.align as keyof typeof ALIGN]));
  if (look.align === "right" && knows("1.9")) ifThere(() => (format.indentLevel = 1));
  ifThere(() => (format.verticalAlignment = look.middle ? "Center" : "Top"));
}

/** Landscape, one page wide, the heading and a foot on every page (ExcelApi 1.9). */
export function layOutForPrint(sheet: Excel.Worksheet): void {
  if (!knows("1.9")) return;
  const { pageLayout } = sheet;
  pageLayout.orientation = "Landscape";
  pageLayout.zoom = { horizontalFitToPages: 1, verticalFitToPages: 0 };
  pageLayout.setPrintTitleRows("$1:$1");
  pageLayout.setPrintMargins("Points", MARGINS);
  const { defaultForAllPages } = pageLayout.headersFooters;
  defaultForAllPages.leftFooter = "&F  &A";
  defaultForAllPages.rightFooter = "Page &P of &N";
}
