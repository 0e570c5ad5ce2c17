/** Who imports whom, read from the code itself: types too. */
const fs = require("node:fs");
const path = require("node:path");
const { preProcessFile } = require("typescript");

const HOUSE = ["src", "functions", "taskpane", "workbench"];
const ENDINGS = ["", ".ts", ".tsx", "/index.ts"];

function filesIn(folder) {
  return fs.readdirSync(folder, { withFileTypes: true }).flatMap((entry) => {
    const file = path.join(folder, entry.name);
    if (entry.isDirectory()) return filesIn(file);
    return /\.tsx?$/.test(entry.name) && !entry.name.endsWith(".d.ts") ? [file] : [];
  });
}

/** Every file of the house with the files of the house it imports, by their paths from the root. */
function readImports(root) {
  const files = new Set(HOUSE.flatMap((folder) => filesIn(path.join(root, folder))));
  const short = (file) => path.relative(root, file).split(path.sep).join("/");
  return new Map(
    [...files].sort().map((file) => {
      const wanted = preProcessFile(fs.readFileSync(file, "utf8")).importedFiles.map(({ fileName }) => fileName);
      const found = wanted.flatMap((name) => {
        const base = path.resolve(path.dirname(file), name);
        const hit = name.startsWith(".") && ENDINGS.map((ending) => base + ending).find((each) => files.has(each));
        return hit ? [short(hit)] : [];
      });
      return [short(file), [...new Set(found)]];
    }),
  );
}

/** Groups of files that import each other in a circle, each sorted. (Tarjan 1972, strongly connected components.) */
function circles(imports) {
  /** @type {string[][]} */
  const found = [];
  /** @type {string[]} */
  const stack = [];
  const [order, lowest] = [new Map(), new Map()];
  const visit = (file) => {
    order.set(file, order.size);
    lowest.set(file, order.get(file));
    stack.push(file);
    for (const next of imports.get(file) ?? []) {
      if (!order.has(next)) visit(next);
      if (stack.includes(next)) lowest.set(file, Math.min(lowest.get(file), lowest.get(next)));
    }
    if (lowest.get(file) !== order.get(file)) return;
    const group = stack.splice(stack.indexOf(file));
    if (group.length > 1) found.push(group.sort());
  };
  for (const file of imports.keys()) if (!order.has(file)) visit(file);
  return found;
}

module.exports = { readImports, circles };
