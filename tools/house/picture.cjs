/** The picture of the house in DEVELOPERS.md, drawn from the real imports: `npm run house` writes it. */
const fs = require("node:fs");
const path = require("node:path");
const { readImports } = require("./imports.cjs");
const { ROOMS } = require("./rooms.cjs");

const [FROM, TO] = ["<!-- house: made by npm run house -->", "<!-- house: end -->"];

/** A room of src/ by its first folder, else the top folder. */
const roomOf = (file) => (file.startsWith("src/") ? file.split("/").slice(0, 2).join("/") : file.split("/")[0]);

/** Arrows between rooms; those that a longer way tells already are left out, so that the picture can be read. */
function arrows(imports) {
  const direct = new Map();
  for (const [file, found] of imports) {
    for (const target of found) {
      const [from, to] = [roomOf(file), roomOf(target)];
      if (from !== to) direct.set(from, (direct.get(from) ?? new Set()).add(to));
    }
  }
  const reaches = (from, to, first) =>
    [...(direct.get(from) ?? [])].some((next) => (next === to ? !first : reaches(next, to, false)));
  return [...direct].flatMap(([from, all]) =>
    [...all].filter((to) => !reaches(from, to, true)).map((to) => [from, to]),
  );
}

function picture(root) {
  const id = (room) => room.replace("/", "_");
  const rooms = [...new Set(ROOMS.map((room) => room.split("/")[0]))];
  return [
    "```mermaid",
    "flowchart BT",
    "  subgraph src",
    ...rooms.map((room) => `    src_${room}["${room}"]`),
    "  end",
    ...arrows(readImports(root))
      .map(([from, to]) => `  ${id(from)} --> ${id(to)}`)
      .sort(),
    "```",
  ].join("\n");
}

const page = (root) => path.join(root, "DEVELOPERS.md");

/** The page with the picture as it would be drawn now. */
function withPicture(root) {
  const text = fs.readFileSync(page(root), "utf8");
  const [start, end] = [text.indexOf(FROM), text.indexOf(TO)];
  if (start < 0 || end < start) throw new Error(`DEVELOPERS.md has no place for the picture: ${FROM} … ${TO}`);
  return `${text.slice(0, start + FROM.length)}\n\n${picture(root)}\n\n${text.slice(end)}`;
}

module.exports = { withPicture };

if (require.main === module) {
  const root = path.resolve(__dirname, "../..");
  fs.writeFileSync(page(root), withPicture(root));
}
