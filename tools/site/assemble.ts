import { createHash } from "node:crypto";
import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { hostFiles } from "./hostFiles";
import { BENDER_POLICY, OFFICE_JS, PANE_POLICY } from "./policy";
import { paneScripts } from "./scripts";
import { type ManifestFacts, productionManifest, productionMetadata } from "./productionManifest";

export type SiteFiles = Map<string, string | Buffer>;

/** Every file of the site by its path, from the built dist/ and the repository around it. */
export function siteFiles(root: string, facts: ManifestFacts): SiteFiles {
  const dist = join(root, "dist");
  const kept = paneScripts(dist);
  // One folder named by what is in it: a browser may keep it forever, and old and new files never mix.
  const folder = `app.${hashOf(kept)}`;
  const files: SiteFiles = new Map(kept.map(([name, bytes]) => [`${folder}/${name}`, bytes]));
  // The manifest names these; their addresses stay, so they are asked for anew each time.
  files.set("manifest.xml", productionManifest(readFileSync(join(root, "manifest.xml"), "utf8"), facts));
  files.set("taskpane.html", paneHtml(readFileSync(join(dist, "taskpane.html"), "utf8"), folder));
  files.set("functions.js", readFileSync(join(dist, "functions.js")));
  files.set("functions.json", productionMetadata(readFileSync(join(dist, "functions.json"), "utf8"), facts.address));
  files.set("demo.json", readFileSync(join(dist, "demo.json")));
  files.set("shortcuts.json", readFileSync(join(dist, "shortcuts.json")));
  files.set("LICENSE.txt", readFileSync(join(root, "LICENSE")));
  for (const [name, content] of benderFiles(join(dist, "bender"))) files.set(`bender/${name}`, content);
  for (const [from, to] of [
    ["dist/icons", "icons"],
    ["docs/help", "help"],
    ["docs/samples", "samples"],
    ["docs/site", "."],
  ] as const)
    addFolder(files, join(root, from), to);
  for (const [name, text] of hostFiles(folder, facts)) files.set(name, text);
  return files;
}

/** Files of the page at the bender: its worker keeps them on the tablet by these names. */
const BENDER_FILES = ["bender.js", "bender.css", "sw.js"];

/** The page at the bender under its policy, and what it loads. */
function benderFiles(folder: string): [name: string, content: string | Buffer][] {
  const html = withPolicy(readFileSync(join(folder, "index.html"), "utf8"), BENDER_POLICY);
  return [
    ["index.html", html],
    ...BENDER_FILES.map((name): [string, Buffer] => [name, readFileSync(join(folder, name))]),
  ];
}

/** A page whose policy stands before anything it loads. */
function withPolicy(html: string, policy: string): string {
  const meta = `<meta http-equiv="Content-Security-Policy" content="${policy}"/>`;
  const under = html.replace(/(<meta charset="utf-8"\s*\/?>)/, `$1${meta}`);
  if (!under.includes(meta)) throw new Error("A page is not built as expected: it has no place for its policy.");
  return under;
}

/** The pane's page with Office.js from Microsoft, our files from their folder, and the policy. */
export function paneHtml(built: string, folder: string): string {
  const html = withPolicy(built, PANE_POLICY)
    .replace(/src="office-js\/office\.js"/, `src="${OFFICE_JS}"`)
    .replace(/(src|href)="([\w.-]+\.(?:js|css))"/g, `$1="${folder}/$2"`);
  if (!html.includes(OFFICE_JS)) throw new Error("taskpane.html is not built as expected.");
  return html;
}

function hashOf(files: readonly (readonly [string, Buffer])[]): string {
  const hash = createHash("sha256");
  for (const [name, bytes] of files) hash.update(`${name}\n${bytes.length}\n`).update(bytes);
  return hash.digest("hex").slice(0, 12);
}

function addFolder(files: SiteFiles, from: string, to: string): void {
  if (!existsSync(from)) return;
  for (const entry of readdirSync(from, { withFileTypes: true })) {
    const [source, target] = [join(from, entry.name), to === "." ? entry.name : `${to}/${entry.name}`];
    if (entry.isDirectory()) addFolder(files, source, target);
    else files.set(target, readFileSync(source));
  }
}
