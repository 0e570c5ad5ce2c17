/** The house as the code has it: no circles, the picture up to date, the rooms small. */
import { existsSync, readFileSync } from "node:fs";
import { dirname, join } from "node:path";

const { circles, readImports } = jest.requireActual<{
  readImports(root: string): Map<string, string[]>;
  circles(imports: ReadonlyMap<string, readonly string[]>): string[][];
}>("../../tools/house/imports.cjs");
const { withPicture } = jest.requireActual<{ withPicture(root: string): string }>("../../tools/house/picture.cjs");
const { ROOMS } = jest.requireActual<{ ROOMS: string[] }>("../../tools/house/rooms.cjs");

const root = join(__dirname, "../..");
const imports = readImports(root);

test("no files import each other in a circle, not even types", () => {
  expect(imports.size).toBeGreaterThan(300);
  expect(circles(imports)).toEqual([]);
});

test("a circle would be found", () => {
  const made = new Map([["a", ["b"]], ["b", ["c", "d"]], ["c", ["a"]], ["d", []]]); // prettier-ignore
  expect(circles(made)).toEqual([["a", "b", "c"]]);
});

test("the picture in DEVELOPERS.md is the one that npm run house draws", () => {
  expect(readFileSync(join(root, "DEVELOPERS.md"), "utf8")).toBe(withPicture(root));
});

test("every room of src/ is in the order", () => {
  const folders = [...new Set([...imports.keys()].filter((file) => file.startsWith("src/")).map(roomOf))];
  expect(folders.sort()).toEqual([...ROOMS].sort());
});

test("no room has more than fifteen files", () => {
  const files = new Map<string, number>();
  for (const file of imports.keys()) files.set(dirname(file), (files.get(dirname(file)) ?? 0) + 1);
  expect([...files].filter(([, count]) => count > MOST_FILES)).toEqual([]);
});

const MOST_FILES = 15;

/** Data and records stand in folders of their own inside their room. */
const roomOf = (file: string): string =>
  file
    .split("/")
    .slice(1, -1)
    .filter((folder) => folder !== "data" && folder !== "kinds")
    .join("/");

test("the files that DEVELOPERS.md and CONTRIBUTING.md name exist", () => {
  for (const page of ["DEVELOPERS.md", "CONTRIBUTING.md"]) {
    const named = readFileSync(join(root, page), "utf8").match(
      /`(?:src|functions|taskpane|workbench|tests|tools)\/[\w./-]+`/g,
    );
    const missing = (named ?? []).map((name) => name.slice(1, -1)).filter((name) => !existsSync(join(root, name)));
    expect({ page, missing }).toEqual({ page, missing: [] });
  }
});
