// Writes beside each text file of dist/ that the local page loads its compressed forms, for tools/start.mjs to send.
import fs from "node:fs";
import path from "node:path";
import { promisify } from "node:util";
import { brotliCompress, constants, gzip } from "node:zlib";

const texts = new Set([".html", ".js", ".css", ".json", ".svg"]);
/** Smaller files fit into one packet anyway [bytes]. */
const worthIt = 1000;

/** How a file may go over the wire, best first: as a browser names it in Accept-Encoding, and what its name ends with. */
export const encodings = [
  { name: "br", ending: ".br" },
  { name: "gzip", ending: ".gz" },
];

const compressed = {
  // 9 of 11: two more take ten times as long for 6 % less.
  br: (bytes) => promisify(brotliCompress)(bytes, { params: { [constants.BROTLI_PARAM_QUALITY]: 9 } }),
  gzip: (bytes) => promisify(gzip)(bytes, { level: 9 }),
};

const timeOf = (file) => fs.statSync(file, { throwIfNoEntry: false })?.mtimeMs ?? 0;

/** Whether a compressed form is there and as new as its file. */
export const isFresh = (file, ending) => timeOf(file + ending) >= timeOf(file);

/** The folders of dist/ with texts that go over the wire. */
const folders = ["", "workbench", "bender"];

/** Compresses what is not yet; takes away compressed forms whose file is gone. */
export async function compress(dist) {
  for (const folder of folders.map((name) => path.join(dist, name))) {
    if (!fs.existsSync(folder)) continue;
    for (const name of fs.readdirSync(folder)) {
      const file = path.join(folder, name);
      const made = encodings.find(({ ending }) => name.endsWith(ending));
      if (made && !fs.existsSync(file.slice(0, -made.ending.length))) fs.rmSync(file);
      if (!texts.has(path.extname(name)) || fs.statSync(file).size < worthIt) continue;
      for (const { name: encoding, ending } of encodings) {
        if (isFresh(file, ending)) continue;
        // Under another name first: a server never finds half a file.
        fs.writeFileSync(`${file}.part`, await compressed[encoding](fs.readFileSync(file)));
        fs.renameSync(`${file}.part`, file + ending);
      }
    }
  }
}
