import { paintScene } from "../../../src/drawing/paper/paintScene";
import type { Scene } from "../../../src/drawing/paper/scene";

const FAMILY = '"Segoe UI", Arial, Helvetica, sans-serif';

/** A drawing as a PNG so many pixels wide, in base 64. */
export function drawPng(scene: Scene, width: number): string {
  const scale = width / scene.width;
  const canvas = document.createElement("canvas");
  canvas.width = width;
  canvas.height = Math.round(scene.height * scale);
  paintScene(canvas.getContext("2d")!, scene, scale, FAMILY);
  return canvas.toDataURL("image/png").replace(/^[^,]*,/, "");
}
