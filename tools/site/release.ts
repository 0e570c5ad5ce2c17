import { strToU8, zipSync } from "fflate";
import type { SiteFiles } from "./assemble";
import { containerFile, nginxFile } from "./container";
import { hostRules } from "./hostFiles";

const README = (address: string) => `Raceway Ledger, an add-in for Excel, to be served from ${address}

1. Put what is in "site" on your web server at that address, so that ${address}taskpane.html opens. "site/_headers" says
   which headers to send (Netlify and Cloudflare Pages read it); nginx.conf says the same, and the Dockerfile puts both in a
   container that serves port 8080, behind whatever ends https:  docker build -t raceway-ledger .
2. Microsoft 365 admin center: Settings, Integrated apps, Upload custom apps; choose site/manifest.xml.
3. node checkHost.mjs in the repository (npm run check:host -- ${address}) opens every address as Excel would.

Nothing leaves the workbook: site/privacy.html.
`;

/** A zip of everything a company needs to serve the site at its address. */
export function releaseZip(files: SiteFiles, address: string): Uint8Array {
  const folder = [...files.keys()].find((name) => /^app\.\w+\//.test(name))!.split("/")[0]!;
  const bytes = (content: string | Buffer) =>
    typeof content === "string" ? strToU8(content) : new Uint8Array(content);
  const site = [...files].map(([name, content]): [string, Uint8Array] => [`site/${name}`, bytes(content)]);
  const around: [string, string][] = [
    ["README.txt", README(address)],
    ["Dockerfile", containerFile()],
    ["nginx.conf", nginxFile(hostRules(folder))],
  ];
  return zipSync(
    Object.fromEntries([...around.map(([name, text]): [string, Uint8Array] => [name, strToU8(text)]), ...site]),
  );
}
