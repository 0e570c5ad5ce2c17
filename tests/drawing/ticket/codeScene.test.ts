/** The code on a ticket, drawn as it is printed and read by a decoder that shares nothing with the encoder. */
import { createCanvas, loadImage } from "@napi-rs/canvas";
import decodeQR from "qr/decode.js";
import { toSvg } from "../../../src/drawing/paper/toSvg";
import { codeScene } from "../../../src/drawing/ticket/codeScene";
import { labelOf, labelText, readLabel, type PieceLabel } from "../../../src/shop/ticket/pieceLabel";
import { ticketsOf } from "../../../src/shop/ticket/ticket";
import { buildRun } from "../../../src/shop/run/buildRun";
import { HALF_EMT, runOf } from "../../support/demoShoe";

/** Pixels to the module: a 24 mm code of 37 modules at 200 dots to the inch has five. */
const PIXELS = 5;

async function readBack(text: string): Promise<string> {
  const scene = codeScene(text, "code");
  const size = scene.width * PIXELS;
  const canvas = createCanvas(size, size);
  const context = canvas.getContext("2d");
  context.fillStyle = "#fff";
  context.fillRect(0, 0, size, size);
  const svg = toSvg(scene, { standalone: true }).replace("<svg ", '<svg style="color: #000" ');
  context.drawImage(await loadImage(Buffer.from(svg)), 0, 0, size, size);
  const { data } = context.getImageData(0, 0, size, size);
  return decodeQR({ width: size, height: size, data: new Uint8ClampedArray(data) });
}

test.each<PieceLabel>([
  { job: "Ferry terminal", piece: "TH-01/2", shape: "GMP3-TN8Y", quantity: 6 },
  { job: "", piece: "R 1/1", shape: "0000-ZZZZ", quantity: 1 },
  { job: "Kraftwerk Süd – Halle 3", piece: "Ä-7/12", shape: "7A2C-9QXY", quantity: 100_000 },
  {
    job: "a job with a name that is longer than most, told whole all the same ".repeat(3).trim(),
    piece: "P/1",
    shape: "AB12-CD34",
    quantity: 40,
  },
])("$piece of “$job” comes back as it went in", async (label) => {
  const read = await readBack(labelText(label));
  expect(read).toBe(labelText(label));
  expect(readLabel(read)).toEqual(label);
});

test("a ticket's code says job, piece, shape and how many", async () => {
  const [, ticket] = ticketsOf(buildRun(runOf("east 300", { name: "Q-7", quantity: 3, job: "Quay" }), HALF_EMT));
  expect(await readBack(labelText(labelOf(ticket!)))).toBe(`Piece: Q-7/2\nShape: ${ticket!.code}\nMake: 3\nJob: Quay`);
});

test("a name over two lines stays one line", () => {
  const label = { job: "Quay\nMake: 9", piece: "A\n1/1", shape: "GMP3-TN8Y", quantity: 2 };
  expect(readLabel(labelText(label))).toEqual({ job: "Quay Make: 9", piece: "A 1/1", shape: "GMP3-TN8Y", quantity: 2 });
});

test.each(["https://example.com/", "", "Piece: A/1\nShape: GMP3-TN8Y\nMake: two\nJob: Q", "Piece: A/1"])(
  "another code, %j, is refused with what it reads",
  (text) => {
    expect(() => readLabel(text)).toThrow("This is not the code of a piece; it reads ");
  },
);
