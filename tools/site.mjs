// Builds the add-in for a static host: `ADDIN_URL=https://tools.example.com/raceway/ npm run site`. Everything to be
// served, the manifest to install from among it, is written to dist/site/; with `-- --zip` also to one zip, with what a
// container needs.
import fs from "node:fs";
import { createRequire } from "node:module";
import path from "node:path";
import { build } from "./build.mjs";

const require = createRequire(import.meta.url);
const root = path.resolve(import.meta.dirname, "..");
const site = path.join(root, "dist", "site");

try {
  require("./typescript.cjs");
  const address = require("./site/address.ts").readAddress(process.env.ADDIN_URL);
  await build(["functions", "taskpane", "bender"]);
  const { version, config } = JSON.parse(fs.readFileSync(path.join(root, "package.json"), "utf8"));
  const files = require("./site/assemble.ts").siteFiles(root, {
    address,
    id: process.env.ADDIN_ID ?? config.addinId,
    version,
  });
  fs.rmSync(site, { recursive: true, force: true });
  for (const [name, content] of files) {
    fs.mkdirSync(path.dirname(path.join(site, name)), { recursive: true });
    fs.writeFileSync(path.join(site, name), content);
  }
  if (process.argv.includes("--zip")) {
    const zip = path.join(root, "dist", `raceway-ledger-${version}.zip`);
    fs.writeFileSync(zip, require("./site/release.ts").releaseZip(files, address));
    process.stdout.write(`${path.relative(process.cwd(), zip)}: to be unpacked on the server\n`);
  }
  process.stdout.write(`${files.size} files for ${address} are in ${path.relative(process.cwd(), site)}\n`);
} catch (error) {
  process.stderr.write(`${error instanceof Error ? error.message : String(error)}\n`);
  process.exitCode = 1;
}
