import { createCanvas, GlobalFonts, loadImage } from "@napi-rs/canvas";
import type { Scene } from "../../../src/drawing/paper/scene";
import { Sketch } from "../../../src/drawing/paper/sketch";
import { drawPng } from "../../../tools/pictures/drawPng";

/** Gray of a spot of the picture, given in units of the drawing: 0 black, 255 white. */
async function painted(scene: Scene, scale = 3): Promise<(x: number, y: number) => number> {
  const image = await loadImage(Buffer.from(drawPng(scene, scene.width * scale)));
  const canvas = createCanvas(image.width, image.height);
  const context = canvas.getContext("2d");
  context.drawImage(image, 0, 0);
  const { data } = context.getImageData(0, 0, image.width, image.height);
  return (x, y) => data[(Math.round(y * scale) * image.width + Math.round(x * scale)) * 4]!;
}

/** A drawing 100 × 60 with these items just as they are. */
const scene = (items: Scene["items"]): Scene => ({ width: 100, height: 60, title: "", description: "", items });

test("conduit is tinted inside a black outline; paper is white", async () => {
  const points = [
    [20, 20],
    [80, 20],
    [80, 40],
    [20, 40],
  ] as const;
  const at = await painted(scene([{ kind: "line", points, closed: true, style: "conduit", width: 2 }]));
  expect([at(5, 5), at(50, 30), at(50, 20), at(20, 30)]).toEqual([255, 232, 0, 0]);
});

test("a halo is a white gap in what lies behind; a mark over it is black again", async () => {
  const across = [[10, 30], [90, 30]] as const; // prettier-ignore
  const down = [[50, 5], [50, 55]] as const; // prettier-ignore
  const line = { kind: "line", closed: false } as const;
  const at = await painted(
    scene([
      { ...line, points: across, style: "conduit-thin", width: 8 },
      { ...line, points: down, style: "halo", width: 12 },
      { ...line, points: down, style: "conduit-thin", width: 4 },
    ]),
  );
  expect([at(20, 30), at(46, 30), at(50, 30), at(54, 30), at(80, 30)]).toEqual([0, 255, 0, 255, 0]);
});

test("dashes leave gaps where the style sheet has them", async () => {
  const points = [[10, 30], [90, 30]] as const; // prettier-ignore
  const at = await painted(scene([{ kind: "line", points, closed: false, style: "ghost", width: 4 }]));
  // 5 on, 3 off.
  expect([at(12, 30), at(16.5, 30), at(20, 30), at(24.5, 30)]).toEqual([0, 255, 0, 255]);
});

test("letters stand at their spot in the font that is brought along", async () => {
  const sketch = new Sketch(100);
  sketch.text("HHHH", [50, 20], "middle");
  const { items } = sketch.finish("", "");
  const at = await painted(scene(items));
  const [text] = items;
  if (text?.kind !== "text") throw new Error("no text");
  const columns = Array.from({ length: 300 }, (_, x) => x / 3).filter((x) => at(x, text.at[1] - 2) < 100);
  const [left, right] = [Math.min(...columns), Math.max(...columns)];
  expect((left + right) / 2).toBeCloseTo(50, 0);
  // Open Sans, hmtx and head tables: H is 1511 of 2048 units wide, of which its stems' outer edges span 1109.
  const span = ((3 * 1511 + 1109) / 2048) * 12;
  expect(Math.abs(right - left - span)).toBeLessThan(1.5);
  expect(GlobalFonts.has("Ticket letters")).toBe(true);
});
