/** Where the development manifest says the add-in and its help are. */
const here = { addin: "https://localhost:3000/", help: "https://raceway-ledger.example/" };

export interface ManifestFacts {
  /** Base address, ending in a slash. */
  address: string;
  /** Another id than the development add-in's, so that both can be installed side by side. */
  id: string;
  /** Version of package.json: three numbers. */
  version: string;
}

/** The manifest people install from, made from the development one. */
export function productionManifest(development: string, { address, id, version }: ManifestFacts): string {
  const manifest = development
    .replace(/<!-- Development manifest[^>]*-->\n?/, "")
    .replace(/<Id>[^<]*<\/Id>/, `<Id>${id}</Id>`)
    .replace(/<Version>[^<]*<\/Version>/, `<Version>${version}.0</Version>`)
    .replace(/<AppDomain>[^<]*<\/AppDomain>/, `<AppDomain>${new URL(address).origin}</AppDomain>`)
    .replaceAll(here.addin, address)
    .replaceAll(here.help, address);
  if (/localhost|\.example\//.test(manifest.replaceAll(address, ""))) {
    throw new Error("manifest.xml still names a development address.");
  }
  return manifest;
}

/** The functions' metadata with help addresses at the base address. */
export function productionMetadata(metadata: string, address: string): string {
  const { functions, ...rest } = JSON.parse(metadata.replaceAll(here.help, address)) as {
    functions: { description?: string }[];
  };
  const shown = functions.map((each) => ({ ...each, description: firstSentence(each.description ?? "") }));
  return JSON.stringify({ ...rest, functions: shown }, undefined, 1);
}

/** What the function dialog has room for: it cuts longer descriptions (OfficeDev/office-js#2063). The help has the rest. */
const firstSentence = (description: string): string =>
  (/^[\s\S]*?[.!?](?=\s|$)/.exec(description.trim())?.[0] ?? description).replace(/\s+/g, " ");
