// Builds what is due and serves the local page: `npm start`. Options: --port 3000, --no-build.
// `--https` serves the same files the way Excel asks for them, with the development certificate.
import { createHash } from "node:crypto";
import fs from "node:fs";
import http from "node:http";
import https from "node:https";
import path from "node:path";
import { fileURLToPath } from "node:url";
import { build } from "./build.mjs";
import { encodings, isFresh } from "./compress.mjs";

const root = path.resolve(path.dirname(fileURLToPath(import.meta.url)), "..");
const dist = path.join(root, "dist");
/** What the manifest names and no build makes, with the folder it lies in. */
const fromDocs = /^\/(help\/|support\.html$|privacy\.html$)/;
const docsFile = (pathname) =>
  path.join(root, "docs", pathname.startsWith("/help/") ? "" : "site", path.normalize(decodeURIComponent(pathname)));
const types = {
  ".html": "text/html; charset=utf-8",
  ".js": "text/javascript; charset=utf-8",
  ".css": "text/css; charset=utf-8",
  ".json": "application/json; charset=utf-8",
  ".png": "image/png",
  ".svg": "image/svg+xml",
  ".woff2": "font/woff2",
};

/** The scripts that stand in a page itself, each allowed by its hash. */
function ownScripts(file) {
  if (path.extname(file) !== ".html") return [];
  const scripts = fs.readFileSync(file, "utf8").matchAll(/<script>([\s\S]*?)<\/script>/g);
  return [...scripts].map(([, text]) => `'sha256-${createHash("sha256").update(text).digest("base64")}'`);
}

/** A page may load from this server only; the browser itself refuses anything else. */
const policyOf = (file) =>
  [
    "default-src 'self'",
    `script-src ${["'self'", ...ownScripts(file)].join(" ")}`,
    "style-src 'self' 'unsafe-inline'",
    "img-src 'self' data: blob:",
    "font-src 'self' data:",
    "base-uri 'self'",
    "form-action 'none'",
    "object-src 'none'",
    "frame-ancestors 'none'",
  ].join("; ");

/** Whether the browser takes an encoding; "br;q=0" is a refusal. */
const accepts = (request, encoding) =>
  String(request.headers["accept-encoding"] ?? "")
    .split(",")
    .some((part) => new RegExp(`^\\s*${encoding}\\s*(;\\s*q=(?!0(\\.0*)?\\s*$).*)?$`).test(part));

/** Where the functions' metadata says their help is until the site is built; here it is served from this machine. */
const HELP = "https://raceway-ledger.example/";

/** The metadata with the help of this server. */
function answerMetadata(file, request, response, headers) {
  const scheme = "encrypted" in request.socket ? "https" : "http";
  const here = `${scheme}://localhost:${request.socket.localPort}/`;
  response.writeHead(200, headers).end(fs.readFileSync(file, "utf8").replaceAll(HELP, here));
}

/** The ribbon on Windows shows no icon that may not be kept. */
const cacheOf = (pathname) => (pathname.startsWith("/icons/") ? "public, max-age=60" : "no-store");

function answer(request, response, headersOf) {
  const { pathname } = new URL(request.url ?? "/", "http://localhost");
  if (pathname === "/") return response.writeHead(302, { Location: "/workbench/" }).end();
  const isDocs = fromDocs.test(pathname);
  let file = isDocs ? docsFile(pathname) : path.normalize(path.join(dist, decodeURIComponent(pathname)));
  const within = isDocs ? path.join(root, "docs") : dist;
  if (file !== within && !file.startsWith(within + path.sep)) return response.writeHead(404).end();
  if (pathname.endsWith("/")) file = path.join(file, "index.html");
  // An address that people type: /bender for /bender/.
  else if (fs.statSync(file, { throwIfNoEntry: false })?.isDirectory()) {
    return response.writeHead(302, { Location: `${pathname}/` }).end();
  }
  if (!fs.statSync(file, { throwIfNoEntry: false })?.isFile()) return response.writeHead(404).end("Not found");
  const type = types[path.extname(file)] ?? "application/octet-stream";
  const headers = { "Content-Type": type, "Cache-Control": cacheOf(pathname), ...headersOf(file) };
  if (pathname === "/functions.json") return answerMetadata(file, request, response, headers);
  const sent = encodings.find(({ name, ending }) => accepts(request, name) && isFresh(file, ending));
  if (sent) response.setHeader("Content-Encoding", sent.name);
  response.setHeader("Vary", "Accept-Encoding");
  response.writeHead(200, headers);
  fs.createReadStream(file + (sent?.ending ?? ""))
    .on("error", () => response.destroy())
    .pipe(response);
}

/**
 * Serves dist/ on this machine only, on the wanted port or the next free one.
 * @param {number} wanted
 * @param {{ certificate?: import("node:https").ServerOptions, tries?: number }} [options]
 */
export function serve(wanted, { certificate, tries = 20 } = {}) {
  // Excel brings its own pages along, so the strict policy is for the local page only.
  const headersOf = (file) =>
    certificate ? { "Access-Control-Allow-Origin": "*" } : { "Content-Security-Policy": policyOf(file) };
  const handle = (request, response) => {
    try {
      answer(request, response, headersOf);
    } catch {
      response.writeHead(400).end();
    }
  };
  return new Promise((resolve, reject) => {
    const server = certificate ? https.createServer(certificate, handle) : http.createServer(handle);
    server.once("error", (/** @type {NodeJS.ErrnoException} */ error) => {
      if (error.code !== "EADDRINUSE" || tries === 0) return reject(error);
      resolve(serve(wanted + 1, { certificate, tries: tries - 1 }));
    });
    server.listen(wanted, "localhost", () => {
      resolve({
        server,
        address: `${certificate ? "https" : "http"}://localhost:${/** @type {import("node:net").AddressInfo} */ (server.address()).port}/`,
      });
    });
  });
}

/** The certificate that Excel trusts on this machine; made and installed the first time, which Windows and macOS ask about. */
async function developmentCertificate() {
  const { getHttpsServerOptions } = await import("office-addin-dev-certs");
  return getHttpsServerOptions();
}

async function main(given) {
  if (!given.includes("--no-build")) await build(["functions", "taskpane", "workbench"]);
  const port = given.includes("--port") ? given[given.indexOf("--port") + 1] : (process.env.PORT ?? "3000");
  if (!/^\d{1,5}$/.test(port ?? "") || Number(port) > 65535) throw new Error(`--port must be 0 to 65535; got ${port}.`);
  // Excel looks for its files on the manifest's port, so there the next free port would not do.
  const options = given.includes("--https") ? { certificate: await developmentCertificate(), tries: 0 } : {};
  const { address } = await serve(Number(port), options);
  process.stdout.write(`\nRaceway Ledger is ready: ${address}\nCtrl+C stops it.\n`);
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  main(process.argv.slice(2)).catch((error) => {
    process.stderr.write(`${error.message}\n`);
    process.exitCode = 1;
  });
}
