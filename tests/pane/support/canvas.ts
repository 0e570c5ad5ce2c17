/** A canvas for the pane's tests, which jsdom has none of: it paints for good, so that a test can read what was drawn. */
import { TextDecoder } from "node:util";
import { createCanvas, loadImage } from "@napi-rs/canvas";
import decodeQR from "qr/decode.js";

const make = Document.prototype.createElement;

export function paintForGood(): void {
  document.createElement = ((name: string, options?: ElementCreationOptions) =>
    name === "canvas"
      ? createCanvas(1, 1)
      : make.call(document, name, options)) as unknown as typeof document.createElement;
}

/** What a code in a PNG says, in base 64. */
export async function readCode(png: string): Promise<string> {
  Object.assign(globalThis, { TextDecoder });
  const image = await loadImage(Buffer.from(png, "base64"));
  const context = createCanvas(image.width, image.height).getContext("2d");
  context.drawImage(image, 0, 0);
  const { data, width, height } = context.getImageData(0, 0, image.width, image.height);
  return decodeQR({ width, height, data: new Uint8ClampedArray(data) });
}
