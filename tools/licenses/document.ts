import { bundledPackages, type Package, toolPackages } from "./packages";

/** docs/licenses.md: what is served with the add-in and the local page, and what only builds and tests them. */
export function licensesDocument(root: string): string {
  return `# Licenses

Raceway Ledger is under the MIT license. It stands on the packages below, each under a license of its own. Written by
\`npm run licenses\`; a test fails when it is out of date or when a served package is not permissively licensed.

## Served

Imported by the functions, the pane or the local page, or by what they import.

${table(bundledPackages(root))}

Office.js comes from Microsoft's own servers under Microsoft's terms and is not passed on with the add-in. The copy in
\`@microsoft/office-js\` stands in for it on the local page and in tests.

## For building and testing

Never served.

${table(toolPackages(root))}
`;
}

function table(packages: readonly Package[]): string {
  const lines = packages.map(({ name, version, license }) => `| ${name} | ${version} | ${license} |`);
  return ["| package | version | license |", "| --- | --- | --- |", ...lines].join("\n");
}
