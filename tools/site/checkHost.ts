/** What a host sends for one address. */
export interface Answered {
  readonly status: number;
  header(name: string): string | null;
  text(): Promise<string>;
}

/**
 * Opens every address that a manifest names, and the pages behind them, as Excel would.
 * @param open asks the host for an address
 * @returns what is amiss, in words; empty where Excel finds all that it needs
 */
export async function checkHost(manifest: string, open: (address: string) => Promise<Answered>): Promise<string[]> {
  const named = [...manifest.matchAll(/(?:DefaultValue|Url)="(https?:\/\/[^"]+)"/g)].map(([, address]) => address!);
  const faults: string[] = [];
  if (named.length < 8) faults.push(`the manifest names ${named.length} addresses only`);
  for (const address of new Set(named)) {
    const { status, header, text } = await open(address);
    if (status !== 200) {
      faults.push(`${address}: status ${status}`);
      continue;
    }
    const kept = header("cache-control") ?? "";
    if (address.endsWith(".png") && /no-cache|no-store/.test(kept))
      faults.push(`${address}: ${kept}; the ribbon on Windows shows no icon then`);
    if (address.endsWith(".json")) {
      const origin = header("access-control-allow-origin");
      if (origin !== "*")
        faults.push(`${address}: Access-Control-Allow-Origin is ${origin ?? "not sent"}; it must be *`);
      if (!isJson(await text())) faults.push(`${address}: is no JSON`);
    }
    if (address.endsWith("taskpane.html")) {
      const html = await text();
      if (!/http-equiv="Content-Security-Policy"/.test(html) && !header("content-security-policy"))
        faults.push(`${address}: has no Content-Security-Policy`);
      for (const [, path] of html.matchAll(/(?:src|href)="([^":]+)"/g)) {
        const part = new URL(path!, address).href;
        const { status: found } = await open(part);
        if (found !== 200) faults.push(`${part}: status ${found}`);
      }
    }
  }
  return faults;
}

function isJson(text: string): boolean {
  try {
    JSON.parse(text);
    return true;
  } catch {
    return false;
  }
}
