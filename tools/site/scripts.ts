import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";

/** How a script asks for another of its parts, by number: to load it, or for its address. */
const asked = /\.[eu]\("?(\d+)"?\)/g;
/** The list of the parts that have a name instead of their number, as in `({191:"pane-shoe",805:"pane-tickets"})[e]`. */
const named = /\{((?:\d+:"[\w-]+",?)+)\}\)\[/;

/**
 * The scripts and styles that the pane's page needs, and no leftovers of earlier builds: those it names, and the
 * numbered parts that they ask for later.
 */
export function paneScripts(dist: string): [name: string, bytes: Buffer][] {
  const page = readFileSync(join(dist, "taskpane.html"), "utf8");
  const there = new Set(readdirSync(dist));
  const waiting = [...page.matchAll(/(?:src|href)="([\w.-]+\.(?:js|css))"/g)].map(([, name]) => name!);
  const names = new Map(
    waiting.filter((name) => name.endsWith(".js")).flatMap((name) => [...partNames(join(dist, name))]),
  );
  const needed = new Map<string, Buffer>();
  for (let name = waiting.pop(); name !== undefined; name = waiting.pop()) {
    if (needed.has(name)) continue;
    if (!there.has(name)) throw new Error(`dist/${name} is asked for and is not there; run npm run build -- --force.`);
    const bytes = readFileSync(join(dist, name));
    needed.set(name, bytes);
    if (there.has(`${name}.LICENSE.txt`))
      needed.set(`${name}.LICENSE.txt`, readFileSync(join(dist, `${name}.LICENSE.txt`)));
    if (name.endsWith(".js")) {
      const parts = [...bytes.toString("utf8").matchAll(asked)].map(([, part]) => names.get(part!) ?? part!);
      waiting.push(...parts.map((part) => `${part}.js`));
      // Some parts bring a style of their own.
      waiting.push(...parts.map((part) => `${part}.css`).filter((style) => there.has(style)));
    }
  }
  return [...needed].sort(([one], [other]) => (one < other ? -1 : 1));
}

/** The names that a page's script gives to numbered parts. */
function partNames(file: string): [part: string, name: string][] {
  const list = named.exec(readFileSync(file, "utf8"))?.[1] ?? "";
  return [...list.matchAll(/(\d+):"([\w-]+)"/g)].map(([, part, name]) => [part!, name!]);
}
