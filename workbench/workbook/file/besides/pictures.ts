import type { WriteSheet } from "hucre/xlsx";
import { PICTURE_DOWN } from "../../../../src/drawing/ticket/blocks";
import type { Picture } from "../../content/sheetContent";

type FileImage = NonNullable<WriteSheet["images"]>[number];

/** English metric units to the point (ECMA-376 part 1, 20.1.10.16: 914,400 to the inch, which has 72 points). */
const EMU_PER_POINT = 914_400 / 72;
/** What a host shows of a description. */
const MOST_WORDS = 1000;

/** A picture as the file library takes it; its size follows in {@link ownSizes}. */
export function fileImage({ png, row, column, title, description }: Picture): FileImage {
  return {
    data: png,
    type: "png",
    anchor: { from: { row, col: column } },
    title,
    altText: description.slice(0, MOST_WORDS),
  };
}

/**
 * The library ties both corners of a picture to cells and so stretches it. Here it hangs by one corner and has its own
 * size (ECMA-376 part 1, 20.5.2.24 oneCellAnchor).
 */
export function ownSizes(xml: string, pictures: readonly Picture[]): string {
  let picture = 0;
  return xml.replace(/<xdr:twoCellAnchor>(.*?)<\/xdr:twoCellAnchor>/gs, (_, inside: string) => {
    const size = extent(pictures[picture++]!);
    const own = inside
      .replace(/<xdr:to>.*?<\/xdr:to>/s, `<xdr:ext ${size}/>`)
      .replace(/<a:ext [^>]*\/>/, `<a:ext ${size}/>`)
      .replace(/<xdr:rowOff>0</, `<xdr:rowOff>${PICTURE_DOWN * EMU_PER_POINT}<`);
    return `<xdr:oneCellAnchor>${own}</xdr:oneCellAnchor>`;
  });
}

const extent = ({ width, height }: Picture): string =>
  `cx="${Math.round(width * EMU_PER_POINT)}" cy="${Math.round(height * EMU_PER_POINT)}"`;
