import { BENDER_POLICY, PANE_POLICY } from "./policy";
import type { ManifestFacts } from "./productionManifest";

/** Headers for the files that a pattern names: a path, or the beginning of one before `*`. Later ones win. */
export interface HostRule {
  readonly path: string;
  readonly headers: Readonly<Record<string, string>>;
}

/**
 * What a host must send. Excel on the web reads functions.json and shortcuts.json from another origin, so they may be read
 * from anywhere. Icons must not be no-cache, or they are missing in the ribbon on Windows (OfficeDev/office-js#2981).
 * @param folder where the files lie that may be kept forever
 */
export const hostRules = (folder: string): readonly HostRule[] => [
  {
    path: "/*",
    headers: { "X-Content-Type-Options": "nosniff", "Referrer-Policy": "no-referrer", "Cache-Control": "no-cache" },
  },
  { path: "/taskpane.html", headers: { "Content-Security-Policy": PANE_POLICY } },
  { path: "/bender/*", headers: { "Content-Security-Policy": BENDER_POLICY } },
  { path: "/functions.js*", headers: { "Access-Control-Allow-Origin": "*" } },
  { path: "/shortcuts.json", headers: { "Access-Control-Allow-Origin": "*" } },
  { path: "/icons/*", headers: { "Cache-Control": "public, max-age=86400" } },
  { path: `/${folder}/*`, headers: { "Cache-Control": "public, max-age=31536000, immutable" } },
];

/** The headers of one path by the rules. */
export const headersFor = (path: string, rules: readonly HostRule[]): Record<string, string> =>
  Object.assign(
    {},
    ...rules
      .filter((rule) => (rule.path.endsWith("*") ? path.startsWith(rule.path.slice(0, -1)) : path === rule.path))
      .map(({ headers }) => headers),
  ) as Record<string, string>;

/** A page for people who find the address, and the headers in the form that several static hosts read. */
export function hostFiles(folder: string, { address, version }: ManifestFacts): [string, string][] {
  return [
    ["index.html", indexHtml(address, version)],
    ["_headers", headersFile(hostRules(folder))],
  ];
}

function headersFile(rules: readonly HostRule[]): string {
  const [first] = rules;
  return rules
    .map((rule) => {
      const lines = Object.entries(rule.headers).flatMap(([name, value]) => [
        // A header that an earlier rule has given is taken away first.
        ...(rule !== first && name in first!.headers ? [`  ! ${name}`] : []),
        `  ${name}: ${value}`,
      ]);
      return [rule.path, ...lines].join("\n");
    })
    .join("\n")
    .concat("\n");
}

function indexHtml(address: string, version: string): string {
  return `<!doctype html>
<html lang="en">
  <head>
    <meta charset="utf-8" />
    <meta name="viewport" content="width=device-width, initial-scale=1" />
    <meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'" />
    <title>Raceway Ledger</title>
    <style>
      body { font: 1rem/1.5 system-ui, sans-serif; max-width: 42rem; margin: 3rem auto; padding: 0 1rem; color: #1c2526; }
      code { background: #eef1f0; padding: 0 0.25em; overflow-wrap: anywhere; }
    </style>
  </head>
  <body>
    <h1>Raceway Ledger ${version}</h1>
    <p>An Excel add-in: write conduit runs in a sheet; bend schedules and take-offs follow by formula.</p>
    <ol>
      <li>Save <a href="manifest.xml" download>manifest.xml</a>.</li>
      <li>In Excel on the web: Home, Add-ins, More Add-ins, Upload My Add-in; choose the file.</li>
      <li>On Windows or a Mac, ask your Microsoft 365 administrator to deploy the file, or follow the README.</li>
      <li>Type <code>=CONDUIT.</code> in a cell, or open the ledger from the Home tab.</li>
    </ol>
    <p>On a tablet at the bender: <a href="bender/">the view for the shop</a>, which works without a network once it was opened.</p>
    <p>Your workbook stays where it is: the add-in sends nothing anywhere. <a href="privacy.html">Privacy</a></p>
    <p><a href="help/index.html">Functions</a>, <a href="support.html">help and support</a></p>
    <p><small>Served from ${address}</small></p>
  </body>
</html>
`;
}
