/** The code of a ticket read by a camera: the browser's camera shows a film of the printed code, held a little askew. */
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { createCanvas } from "@napi-rs/canvas";
import type { Browser, Page } from "playwright-core";
import { benderJobText } from "../../src/made/records/benderJob";
import { buildJob } from "../../src/shop/job/job";
import { jobTickets } from "../../src/shop/ticket/jobTickets";
import { labelOf, labelText } from "../../src/shop/ticket/pieceLabel";
import type { Ticket } from "../../src/shop/ticket/ticket";
import { codeScene } from "../../src/drawing/ticket/codeScene";
import { demoRuns } from "../../workbench/demo/ferryTerminal";
import { launchBrowser } from "./launch";
import { type PageServer, startServer } from "./server";

jest.setTimeout(180_000);

const [WIDE, HIGH] = [640, 480];
/** Side of the code in the picture [px], and how far it is turned [°]. */
const [SIDE, ASKEW] = [260, 9];

/** A picture of a text's code before a gray wall, as gray values row by row. */
function picture(text: string): Uint8Array {
  const { width: modules, items } = codeScene(text, "");
  const canvas = createCanvas(WIDE, HIGH);
  const draw = canvas.getContext("2d");
  draw.fillStyle = "#999";
  draw.fillRect(0, 0, WIDE, HIGH);
  draw.translate(WIDE * 0.55, HIGH * 0.48);
  draw.rotate((ASKEW * Math.PI) / 180);
  draw.scale(SIDE / modules, SIDE / modules);
  draw.translate(-modules / 2, -modules / 2);
  draw.fillStyle = "#eee";
  draw.fillRect(0, 0, modules, modules);
  draw.fillStyle = "#222";
  for (const item of items) {
    if (item.kind !== "line") throw new Error("a code is made of bars");
    const [[left, top], , [right, bottom]] = item.points as [number, number][] as [[number, number], unknown, [number, number]]; // prettier-ignore
    draw.fillRect(left, top, right - left, bottom - top);
  }
  const { data } = draw.getImageData(0, 0, WIDE, HIGH);
  return Uint8Array.from({ length: WIDE * HIGH }, (_, at) => data[4 * at]!);
}

/** A film of still pictures, gray: YUV4MPEG2 with 4:2:0, as Chromium's pretended camera takes it. */
function film(file: string, gray: Uint8Array): void {
  const colors = Buffer.alloc((WIDE * HIGH) / 2, 128);
  const frames = Array.from({ length: 10 }, () => [Buffer.from("FRAME\n"), Buffer.from(gray), colors]);
  const head = Buffer.from(`YUV4MPEG2 W${WIDE} H${HIGH} F10:1 Ip A1:1 C420jpeg\n`);
  writeFileSync(file, Buffer.concat([head, ...frames.flat()]));
}

const { tickets } = jobTickets(buildJob({ runs: demoRuns }));
const bent = tickets.filter(({ bends }) => bends.length > 0);
const ticket = bent.at(-1)!;
const job = benderJobText({ style: "feet", runs: demoRuns.map((row) => row.map((cell) => cell ?? "")) });

let server: PageServer;
let folder: string;
let browser: Browser | undefined;

beforeAll(async () => {
  server = await startServer();
  folder = mkdtempSync(join(tmpdir(), "camera-"));
});
afterEach(() => browser?.close());
afterAll(() => {
  server.stop();
  rmSync(folder, { recursive: true });
});

/** The page at the bender with the demo job, on a device whose camera sees a code of this text, or that has none. */
async function atBender(text: string | undefined): Promise<Page> {
  const file = join(folder, "camera.y4m");
  if (text !== undefined) film(file, picture(text));
  browser = await launchBrowser(
    text === undefined
      ? []
      : ["--use-fake-device-for-media-stream", "--use-fake-ui-for-media-stream", `--use-file-for-fake-video-capture=${file}`], // prettier-ignore
  );
  const page = await browser.newPage({ viewport: { width: 390, height: 844 } });
  await page.goto(`${server.address}bender`);
  await page.getByLabel("Paste the job here").fill(job);
  await page.getByRole("button", { name: "Open", exact: true }).click();
  await page.getByRole("button", { name: "Read a code" }).click();
  return page;
}

const labeled = (change: Partial<ReturnType<typeof labelOf>>, of: Ticket = ticket) =>
  labelText({ ...labelOf(of), ...change });

test("leads to its piece, and the camera goes off", async () => {
  const page = await atBender(labeled({}));
  await page.getByRole("heading", { name: new RegExp(`^${ticket.name}`) }).waitFor();
  expect(await page.locator("video").count()).toBe(0);
  await page.getByText(`of ${ticket.run.quantity} made`).waitFor();
});

test("of a shape that has changed since is said, with both shapes", async () => {
  const page = await atBender(labeled({ shape: "AAAA-BBBB" }));
  await page
    .getByText(`its shape was AAAA-BBBB and is ${ticket.code}. Make it by what stands here.`, { exact: false })
    .waitFor();
});

test("of another job is said, and one can choose from the list", async () => {
  const page = await atBender(labeled({ piece: "Z-99/1" }));
  await page.getByText("Z-99/1 is no piece of this job.").waitFor();
  await page.getByRole("button", { name: new RegExp(`^${ticket.name}`) }).waitFor();
});

test("that is no piece's code is said while the camera goes on looking", async () => {
  const page = await atBender("https://example.com");
  await page.getByRole("alert").getByText("This is not the code of a piece").waitFor();
  expect(await page.locator("video").count()).toBe(1);
});

test("without a camera the list is named instead", async () => {
  const page = await atBender(undefined);
  await page
    .getByRole("alert")
    .getByText(/^The camera cannot be used: .+ Choose the piece from the list\.$/)
    .waitFor();
});
