import http from "node:http";
import { brotliDecompressSync, gunzipSync } from "node:zlib";
import { withBench } from "./atPage";
import type { Bench } from "./bench";

jest.setTimeout(300000);

let bench: Bench;

withBench((opened) => (bench = opened));

/** A file as the server sends it to somebody who takes these encodings. */
function sent(path: string, accepted: string): Promise<{ encoding: string | undefined; body: Buffer }> {
  return new Promise((resolve, reject) => {
    const headers = { "Accept-Encoding": accepted };
    http
      .get(new URL(path, bench.origin), { headers }, (response) => {
        const chunks: Buffer[] = [];
        response.on("data", (chunk: Buffer) => chunks.push(chunk));
        response.on("end", () =>
          resolve({ encoding: response.headers["content-encoding"], body: Buffer.concat(chunks) }),
        );
      })
      .on("error", reject);
  });
}

test("files go over the wire compressed, in the form the browser takes, and are the same", async () => {
  const path = "/workbench/worker.js";
  const [plain, brotli, gzip, refused] = await Promise.all(
    ["identity", "gzip, deflate, br", "gzip;q=0.5, br;q=0", "br;q=0, gzip;q=0.0"].map((accepted) =>
      sent(path, accepted),
    ),
  );
  expect([plain, brotli, gzip, refused].map((each) => each!.encoding)).toEqual([undefined, "br", "gzip", undefined]);
  expect(brotliDecompressSync(brotli!.body).equals(plain!.body)).toBe(true);
  expect(gunzipSync(gzip!.body).equals(plain!.body)).toBe(true);
  expect(refused!.body.equals(plain!.body)).toBe(true);
});

test("the page and its worker weigh no more than 2.5 MB on the wire", async () => {
  const paths = [...new Set(bench.requested.filter((url) => url.startsWith(bench.origin)))];
  expect(paths.filter((url) => /\/(grid|worker|functions)\.js$/.test(url)).length).toBeGreaterThanOrEqual(2);
  // The worker loads the functions itself.
  const files = await Promise.all([...paths, "/functions.js"].map((path) => sent(path, "gzip, br")));
  const bytes = files.reduce((sum, { body }) => sum + body.length, 0);
  expect(bytes).toBeGreaterThan(500_000);
  expect(bytes).toBeLessThanOrEqual(2_500_000);
});

describe("a stored workbook", () => {
  const schedule = () => bench.values("Schedule!A1:H6");

  test("shows its results before they are worked out, and says that they are", async () => {
    await bench.type("Runs!A2", "MINE-1");
    await bench.saved();
    const before = await schedule();
    expect(before[1]![0]).toBe("MINE-1");
    await bench.page.waitForTimeout(1000);
    // A worker that takes everything and answers nothing: whatever the page shows now was kept.
    await bench.page.route("**/worker.js", (route) =>
      route.fulfill({ contentType: "text/javascript", body: "onmessage = () => {};" }),
    );
    await bench.page.reload();
    await bench.page.waitForFunction(() => window.ledgerBook !== undefined);
    expect(await schedule()).toEqual(before);
    await bench.page.getByText("Working out the formulas").waitFor();
    expect(await bench.page.evaluate(() => window.ledgerBook!.calculation.busy)).toBe(true);
    // The grid takes edits meanwhile, and keeps them.
    await bench.page.evaluate(() => window.ledgerBook!.range("Runs!AM3").setValues([["typed early"]]));
    await bench.saved();
    await bench.page.unroute("**/worker.js");
    await bench.reload();
    expect(await bench.values("Runs!AM3")).toEqual([["typed early"]]);
    expect(await schedule()).toEqual(before);
  });

  test("says so when the part that calculates does not load, and keeps the cells", async () => {
    await bench.type("Runs!A2", "MINE-1");
    await bench.saved();
    await bench.page.route("**/worker.js", (route) => route.abort());
    await bench.page.reload();
    await bench.page.getByText("The part of the page that calculates did not load").waitFor();
    // The word can come before the workbook stands; a person sees the cells a moment later.
    await bench.page.waitForFunction(() => window.ledgerBook !== undefined);
    expect(await bench.values("Runs!A2")).toEqual([["MINE-1"]]);
  });
});
