import { reading, type Commit } from "./batch";
import { knows } from "./ifThere";
import type { PrintArea } from "./printSheet";

/** A picture over a sheet, hanging from the top left corner of a cell. */
export interface SheetPicture extends Pick<PrintArea, "row" | "column"> {
  /** [pt] */
  width: number;
  height: number;
  /** So far below the top of its cell [pt]. */
  down: number;
  /** The bytes of a PNG file in base 64. */
  png: string;
  /** What it shows, for those who cannot see it. */
  title: string;
  description: string;
}

/** Excel on the web refuses requests over 5 MB: pictures go over in parts of about so many letters. */
const PART = 1_500_000;

/** True where this Excel takes pictures (ExcelApi 1.9); the local page does not. */
export const takesPictures = (): Promise<boolean> =>
  reading((context) => {
    try {
      return Promise.resolve(knows("1.9") && context.workbook.worksheets.getActiveWorksheet().shapes !== undefined);
    } catch (error) {
      if ((error as { code?: string }).code === "ApiNotFound") return Promise.resolve(false);
      throw error;
    }
  });

/** Lays pictures over a sheet, each where Excel says that its cell stands. */
export async function addPictures(
  { context, commit }: { context: Excel.RequestContext; commit: Commit },
  sheet: Excel.Worksheet,
  pictures: readonly SheetPicture[],
): Promise<void> {
  for (const part of inParts(pictures)) {
    const cells = part.map(({ row, column }) => sheet.getRangeByIndexes(row, column, 1, 1).load("left,top"));
    await context.sync();
    part.forEach(({ png, width, height, down, title, description }, place) => {
      const { left, top } = cells[place]!;
      const shape = sheet.shapes.addImage(png);
      shape.lockAspectRatio = false;
      Object.assign(shape, { left, top: top + down, width, height, placement: "OneCell" });
      Object.assign(shape, { altTextTitle: title, altTextDescription: description });
    });
    await commit();
  }
}

function inParts(pictures: readonly SheetPicture[]): SheetPicture[][] {
  const parts: SheetPicture[][] = [];
  let size = Infinity;
  for (const picture of pictures) {
    size += picture.png.length;
    if (size > PART) parts.push([]);
    if (size > PART) size = picture.png.length;
    parts.at(-1)!.push(picture);
  }
  return parts;
}
