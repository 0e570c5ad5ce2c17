import { DASHES, LINE_WIDTHS } from "./drawingCss";
import type { CircleItem, LineItem, Scene, TextItem } from "./scene";
import { TEXT_SIZE } from "./textBox";

/** What a drawing is painted with: a browser's canvas, or another of the same shape. */
export interface Canvas2D {
  scale(x: number, y: number): void;
  beginPath(): void;
  moveTo(x: number, y: number): void;
  lineTo(x: number, y: number): void;
  closePath(): void;
  arc(x: number, y: number, radius: number, from: number, to: number): void;
  stroke(): void;
  fill(): void;
  setLineDash(dashes: number[]): void;
  fillRect(x: number, y: number, width: number, height: number): void;
  fillText(text: string, x: number, y: number): void;
  lineWidth: number;
  lineJoin: string;
  lineCap: string;
  globalAlpha: number;
  strokeStyle: unknown;
  fillStyle: unknown;
  font: string;
  textAlign: string;
  textBaseline: string;
}

const [INK, PAPER, TINT] = ["#000000", "#ffffff", "#e8e8e8"];
const HIGHLIGHT_INK = 0.6;
/** From halfway up the letters to the line they stand on, in shares of their height: as in the SVG. */
const DROP = 0.36;

/** Paints a drawing black on white, `scale` pixels to its unit, as the style sheet of the SVG has it on paper. */
export function paintScene(canvas: Canvas2D, scene: Scene, scale: number, family: string): void {
  canvas.scale(scale, scale);
  canvas.fillStyle = PAPER;
  canvas.fillRect(0, 0, scene.width, scene.height);
  canvas.lineJoin = "round";
  canvas.textBaseline = "alphabetic";
  for (const item of scene.items) {
    if (item.kind === "text") paintText(canvas, item, family);
    else paintLine(canvas, item);
  }
}

function paintText(canvas: Canvas2D, { text, at: [x, y], anchor, style }: TextItem, family: string): void {
  canvas.font = `${style === "strong" ? 600 : 400} ${TEXT_SIZE}px ${family}`;
  canvas.textAlign = anchor === "middle" ? "center" : anchor;
  canvas.fillStyle = INK;
  canvas.fillText(text, x, y + DROP * TEXT_SIZE);
}

function paintLine(canvas: Canvas2D, item: LineItem | CircleItem): void {
  const { style } = item;
  canvas.beginPath();
  if (item.kind === "circle") canvas.arc(item.center[0], item.center[1], item.radius, 0, 2 * Math.PI);
  else {
    item.points.forEach(([x, y], index) => (index === 0 ? canvas.moveTo(x, y) : canvas.lineTo(x, y)));
    if (item.closed) canvas.closePath();
  }
  if (style === "conduit" || style === "solid") {
    canvas.fillStyle = style === "solid" ? INK : TINT;
    canvas.fill();
  }
  if (style === "solid") return;
  canvas.strokeStyle = style === "halo" ? PAPER : INK;
  canvas.globalAlpha = style === "highlight" ? HIGHLIGHT_INK : 1;
  canvas.lineCap = style === "conduit-thin" ? "round" : "butt";
  canvas.lineWidth = item.width ?? LINE_WIDTHS[style];
  canvas.setLineDash([...(DASHES[style] ?? [])]);
  canvas.stroke();
  canvas.globalAlpha = 1;
}
