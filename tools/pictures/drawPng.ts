import { createCanvas, GlobalFonts } from "@napi-rs/canvas";
import type { Scene } from "../../src/drawing/paper/scene";
import { paintScene } from "../../src/drawing/paper/paintScene";

/** Brought along, so that letters look the same on machines that have no fonts at all. */
const FAMILY = "Ticket letters";
for (const weight of [400, 600]) {
  const file = require.resolve(`@fontsource/open-sans/files/open-sans-latin-${weight}-normal.woff2`);
  if (!GlobalFonts.registerFromPath(file, FAMILY)) throw new Error(`The font ${file} cannot be read.`);
}

/** A drawing as a PNG so many pixels wide. */
export function drawPng(scene: Scene, width: number): Uint8Array {
  const scale = width / scene.width;
  const canvas = createCanvas(width, Math.round(scene.height * scale));
  paintScene(canvas.getContext("2d"), scene, scale, `"${FAMILY}"`);
  return canvas.toBuffer("image/png");
}
