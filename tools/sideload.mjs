// Installs the add-in for this person's Excel: `npm run sideload`, or `npm run sideload -- path/to/manifest.xml`.
// `npm run sideload -- --remove` takes it out again. Without a path: dist/site/manifest.xml if there is one, which needs
// nothing running on this machine, else the development manifest, which needs `npm run dev-server`.
import { execFileSync } from "node:child_process";
import fs from "node:fs";
import { createRequire } from "node:module";
import os from "node:os";
import path from "node:path";

const require = createRequire(import.meta.url);
const root = path.resolve(import.meta.dirname, "..");

try {
  require("./typescript.cjs");
  const given = process.argv.slice(2);
  const remove = given.includes("--remove");
  const built = path.join(root, "dist", "site", "manifest.xml");
  const usual = fs.existsSync(built) ? built : path.join(root, "manifest.xml");
  const manifest = path.resolve(given.find((word) => word !== "--remove") ?? usual);
  const xml = fs.readFileSync(manifest, "utf8");
  const plan = require("./sideload/plan.ts").planSideloading(process.platform, os.homedir(), manifest, xml);
  if (plan.how === "copy") {
    fs.mkdirSync(path.dirname(plan.to), { recursive: true });
    if (remove) fs.rmSync(plan.to, { force: true });
    else fs.copyFileSync(manifest, plan.to);
  } else if (plan.how === "registry") {
    const value = remove
      ? ["delete", plan.key, "/v", plan.name]
      : ["add", plan.key, "/v", plan.name, "/t", "REG_SZ", "/d", plan.value];
    execFileSync("reg", [...value, "/f"], { stdio: "inherit" });
  }
  process.stdout.write(`${manifest}\n${remove && plan.how !== "words" ? "Taken out. Restart Excel." : plan.then}\n`);
} catch (error) {
  process.stderr.write(`${error instanceof Error ? error.message : String(error)}\n`);
  process.exitCode = 1;
}
