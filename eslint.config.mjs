// Lint rules. The part that matters most: who may import whom (see DEVELOPERS.md, "The house").
import tseslint from "typescript-eslint";

/** Rooms of src/, left to right. A file imports only from its own room and from rooms to its left. */
const rooms = [
  "units",
  "table",
  "geometry",
  "raceway",
  "rules",
  "bends",
  "route",
  "shop",
  "cutting",
  "takeoff",
  "drawing",
];

const noRoom = (names) => ({
  group: names.flatMap((name) => [`**/${name}/*`, `**/${name}/**`]),
  message: "This import goes against the direction of the house (DEVELOPERS.md).",
});

const roomRules = rooms.map((room, index) => ({
  files: [`src/${room}/**/*.ts`],
  rules: {
    "no-restricted-imports": [
      "error",
      { patterns: [noRoom([...rooms.slice(index + 1), "functions", "taskpane", "workbench", "tests"])] },
    ],
    "no-restricted-globals": [
      "error",
      ...["window", "document", "Office", "Excel", "CustomFunctions", "process", "fetch", "localStorage", "Date"].map(
        (name) => ({ name, message: "src/ is pure: no Office, DOM, files or clock." }),
      ),
    ],
  },
}));

export default tseslint.config(
  { ignores: ["dist/", "node_modules/", "coverage/", "reports/", ".cache/", ".stryker-tmp/", "docs/"] },
  ...tseslint.configs.recommended,
  {
    rules: {
      "@typescript-eslint/no-unused-vars": ["error", { argsIgnorePattern: "^_" }],
      eqeqeq: ["error", "always", { null: "ignore" }],
      "no-restricted-syntax": [
        "error",
        { selector: "CallExpression[callee.name=/^(alert|confirm|prompt|eval)$/]", message: "Not in an add-in." },
      ],
    },
  },
  ...roomRules,
  {
    // The metadata generator reads `any` as "a number or text"; it fails on unions.
    files: ["functions/**/*.ts"],
    rules: {
      "@typescript-eslint/no-explicit-any": "off",
      "no-restricted-imports": ["error", { patterns: [noRoom(["taskpane", "workbench", "tests"])] }],
    },
  },
  {
    files: ["taskpane/**/*.{ts,tsx}"],
    rules: { "no-restricted-imports": ["error", { patterns: [noRoom(["functions", "workbench", "tests"])] }] },
  },
  { files: ["**/*.cjs", "**/*.cts"], rules: { "@typescript-eslint/no-require-imports": "off" } },
);
