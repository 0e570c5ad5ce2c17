// Builds what is due and serves the local page: `npm start`. Options: --port 3000, --no-build.
import fs from "node:fs";
import http from "node:http";
import path from "node:path";
import { fileURLToPath } from "node:url";
import { build } from "./build.mjs";

const dist = path.resolve(path.dirname(fileURLToPath(import.meta.url)), "..", "dist");
const types = {
  ".html": "text/html; charset=utf-8",
  ".js": "text/javascript; charset=utf-8",
  ".css": "text/css; charset=utf-8",
  ".json": "application/json; charset=utf-8",
  ".png": "image/png",
  ".svg": "image/svg+xml",
  ".woff2": "font/woff2",
};

/** The page may load from this server only; the browser itself refuses anything else. */
const policy = [
  "default-src 'self'",
  "script-src 'self' 'unsafe-inline' 'unsafe-eval'",
  "style-src 'self' 'unsafe-inline'",
  "img-src 'self' data: blob:",
  "font-src 'self' data:",
].join("; ");

function answer(request, response) {
  const { pathname } = new URL(request.url ?? "/", "http://localhost");
  if (pathname === "/") return response.writeHead(302, { Location: "/workbench/" }).end();
  let file = path.normalize(path.join(dist, decodeURIComponent(pathname)));
  if (file !== dist && !file.startsWith(dist + path.sep)) return response.writeHead(404).end();
  if (pathname.endsWith("/")) file = path.join(file, "index.html");
  if (!fs.statSync(file, { throwIfNoEntry: false })?.isFile()) return response.writeHead(404).end("Not found");
  const type = types[path.extname(file)] ?? "application/octet-stream";
  response.writeHead(200, { "Content-Type": type, "Cache-Control": "no-store", "Content-Security-Policy": policy });
  fs.createReadStream(file).on("error", () => response.destroy()).pipe(response);
}

/** Serves dist/ on this machine only, on the wanted port or the next free one. */
export function serve(wanted, tries = 20) {
  return new Promise((resolve, reject) => {
    const server = http.createServer((request, response) => {
      try {
        answer(request, response);
      } catch {
        response.writeHead(400).end();
      }
    });
    server.once("error", (error) => {
      if (error.code !== "EADDRINUSE" || tries === 0) return reject(error);
      resolve(serve(wanted + 1, tries - 1));
    });
    server.listen(wanted, "localhost", () => resolve({ server, address: `http://localhost:${server.address().port}/` }));
  });
}

async function main(given) {
  if (!given.includes("--no-build")) await build(["functions", "taskpane", "workbench"]);
  const port = Number(given[given.indexOf("--port") + 1] ?? 0);
  const { address } = await serve(given.includes("--port") ? port : Number(process.env.PORT ?? 3000));
  process.stdout.write(`\nRaceway Ledger is ready: ${address}\nCtrl+C stops it.\n`);
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  main(process.argv.slice(2)).catch((error) => {
    process.stderr.write(`${error.message}\n`);
    process.exitCode = 1;
  });
}
