// Lint rules. The part that matters most: who may import whom (see DEVELOPERS.md, "The house").
import { createTypeScriptImportResolver } from "eslint-import-resolver-typescript";
import importX from "eslint-plugin-import-x";
import tseslint from "typescript-eslint";
import rooms from "./tools/house/rooms.cjs";

const { ROOMS } = rooms;
const AGAINST = "This import goes against the direction of the house (DEVELOPERS.md).";
const zone = (target, ...from) => ({
  target: `./${target}`,
  from: from.map((files) => `./${files}`),
  message: AGAINST,
});

/** What of a later room a room may not import: all of it; of the room it lies in, the files beside it. */
const insideOf = (room, later) => `src/${later}/${room.startsWith(`${later}/`) ? "*.ts" : "**/*"}`;

/** A file of src/ imports only from its own room and from rooms before it; nobody imports what stands above him. */
const zones = [
  ...ROOMS.flatMap((room, index) => {
    const later = ROOMS.slice(index + 1);
    const within = later.filter((each) => each.startsWith(`${room}/`));
    const others = later.filter((each) => !within.includes(each)).map((each) => insideOf(room, each));
    // A room that stands before its own sub-rooms: its files may not import from them, theirs may from it.
    return [zone(`src/${room}`, ...others), zone(`src/${room}/*.ts`, ...within.map((each) => `src/${each}/**/*`))];
  }),
  zone("src", "functions/**/*", "taskpane/**/*", "workbench/**/*", "tests/**/*", "tools/**/*"),
  zone("functions", "taskpane/**/*", "workbench/**/*", "tests/**/*", "tools/**/*"),
  zone("taskpane", "functions/**/*", "workbench/**/*", "tests/**/*", "tools/**/*"),
  zone("workbench", "tests/**/*", "tools/**/*"),
].filter(({ from }) => from.length > 0);

/** The rooms with one public door: whoever stands outside takes what index.ts names. */
const doors = ["src/cutting"].map((room) => ({
  ...{ target: ["src", "functions", "taskpane", "workbench", "tools"].map((folder) => `./${folder}/!(cutting)/**/*`) },
  ...{ from: `./${room}`, except: ["./index.ts"], message: `Import from ${room}/index.ts, its public door.` },
}));

export default tseslint.config(
  { ignores: ["dist/", "node_modules/", "coverage/", "reports/", ".cache/", ".stryker-tmp/", "docs/"] },
  ...tseslint.configs.recommended,
  {
    plugins: { "import-x": importX },
    settings: { "import-x/resolver-next": [createTypeScriptImportResolver()] },
    rules: {
      "@typescript-eslint/no-unused-vars": ["error", { argsIgnorePattern: "^_" }],
      eqeqeq: ["error", "always", { null: "ignore" }],
      "import-x/no-restricted-paths": ["error", { zones: [...zones, ...doors] }],
      "no-restricted-syntax": [
        "error",
        { selector: "CallExpression[callee.name=/^(alert|confirm|prompt|eval)$/]", message: "Not in an add-in." },
      ],
    },
  },
  {
    files: ["src/**", "functions/**", "taskpane/**", "workbench/**"],
    rules: { "import-x/no-cycle": ["error", { ignoreExternal: true }] },
  },
  {
    files: ["src/**/*.ts"],
    ignores: ["src/geometry/angle.ts"],
    rules: {
      "no-restricted-properties": [
        "error",
        ...["sin", "cos", "tan", "asin", "acos", "atan", "atan2"].map((property) => ({
          ...{ object: "Math", property, message: "Degrees never meet a sine: src/geometry/angle.ts." },
        })),
      ],
    },
  },
  {
    files: ["src/**/*.ts"],
    rules: {
      "no-restricted-globals": [
        "error",
        ...["window", "document", "Office", "Excel", "CustomFunctions", "process", "fetch", "localStorage", "Date"].map(
          (name) => ({ name, message: "src/ is pure: no Office, DOM, files or clock." }),
        ),
      ],
    },
  },
  // The metadata generator reads `any` as "a number or text"; it fails on unions.
  { files: ["functions/**/*.ts"], rules: { "@typescript-eslint/no-explicit-any": "off" } },
  { files: ["**/*.cjs", "**/*.cts"], rules: { "@typescript-eslint/no-require-imports": "off" } },
);
