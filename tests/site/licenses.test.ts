import { readFileSync } from "node:fs";
import { join } from "node:path";
import { licensesDocument } from "../../tools/licenses/document";
import { bundledPackages } from "../../tools/licenses/packages";
import { isPermissive } from "../../tools/licenses/permissive";

const root = join(__dirname, "../..");

test("docs/licenses.md is what the lock file says; `npm run licenses` writes it", () => {
  expect(readFileSync(join(root, "docs/licenses.md"), "utf8")).toBe(licensesDocument(root));
});

test("everything that is served is permissively licensed", () => {
  const packages = bundledPackages(root);
  // What the pane is made with is found, and what that is made with in turn.
  expect(packages.map(({ name }) => name)).toEqual(
    expect.arrayContaining(["react", "@fluentui/react-components", "hucre", "scheduler", "@griffel/core"]),
  );
  expect(packages.filter(({ license }) => !isPermissive(license))).toEqual([]);
});

test.each([
  ["MIT", true],
  ["(BSD-3-Clause OR GPL-2.0)", true],
  ["Apache-2.0 AND MIT", true],
  ["(MIT AND GPL-3.0)", false],
  ["GPL-3.0-or-later", false],
  ["UNLICENSED", false],
  ["unknown", false],
])("%s is permissive: %p", (license, expected) => {
  expect(isPermissive(license)).toBe(expected);
});
