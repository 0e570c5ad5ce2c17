import { reading, type Commit } from "../batch";
import { knows } from "../ifThere";
import type { PrintArea } from "./printArea";

/** A picture over a sheet, hanging from the top left corner of a cell. */
export interface SheetPicture extends Pick<PrintArea, "row" | "column"> {
  /** [pt] */
  width: number;
  height: number;
  /** So far below the top of its cell [pt]. */
  down: number;
  /** Draws it: the bytes of a PNG file in base 64. */
  png(): string;
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

/**
 * Lays pictures over a sheet, each where Excel says that its cell stands. They are drawn as they go.
 * @param goOn told how many lie there with each part; false stops it
 * @returns whether all of them lie there
 */
export async function addPictures(
  { context, commit }: { context: Excel.RequestContext; commit: Commit },
  sheet: Excel.Worksheet,
  pictures: readonly SheetPicture[],
  goOn: (count: number) => boolean,
): Promise<boolean> {
  for (let first = 0; first < pictures.length;) {
    const part: { picture: SheetPicture; png: string; cell: Excel.Range }[] = [];
    for (let size = 0; size < PART && first < pictures.length; first++) {
      const picture = pictures[first]!;
      const png = picture.png();
      size += png.length;
      const cell = sheet.getRangeByIndexes(picture.row, picture.column, 1, 1).load("left,top");
      part.push({ picture, png, cell });
    }
    await context.sync();
    for (const { picture, png, cell } of part) lay(sheet, picture, png, cell);
    await commit();
    if (!goOn(part.length)) return false;
  }
  return true;
}

function lay(sheet: Excel.Worksheet, picture: SheetPicture, png: string, { left, top }: Excel.Range): void {
  const { width, height, down, title, description } = picture;
  const shape = sheet.shapes.addImage(png);
  shape.lockAspectRatio = false;
  Object.assign(shape, { left, top: top + down, width, height, placement: "OneCell" });
  Object.assign(shape, { altTextTitle: title, altTextDescription: description });
}
