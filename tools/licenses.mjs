// Writes docs/licenses.md from the lock file: `npm run licenses`.
import fs from "node:fs";
import { createRequire } from "node:module";
import path from "node:path";

const require = createRequire(import.meta.url);
const root = path.resolve(import.meta.dirname, "..");
require("./typescript.cjs");
const target = path.join(root, "docs", "licenses.md");
fs.mkdirSync(path.dirname(target), { recursive: true });
fs.writeFileSync(target, require("./licenses/document.ts").licensesDocument(root));
process.stdout.write(`${path.relative(process.cwd(), target)} is written.\n`);
