// Opens every address that a served manifest names, as Excel would: `npm run check:host -- https://tools.example.com/raceway/`.
import { createRequire } from "node:module";

const require = createRequire(import.meta.url);

try {
  require("./typescript.cjs");
  const address = require("./site/address.ts").readAddress(process.argv[2]);
  const open = async (wanted) => {
    const response = await fetch(wanted, { redirect: "manual" });
    return { status: response.status, header: (name) => response.headers.get(name), text: () => response.text() };
  };
  const manifest = await open(`${address}manifest.xml`);
  if (manifest.status !== 200) throw new Error(`${address}manifest.xml: status ${manifest.status}`);
  const faults = await require("./site/checkHost.ts").checkHost(await manifest.text(), open);
  if (faults.length > 0) throw new Error(faults.join("\n"));
  process.stdout.write("Every address that the manifest names is there, with what Excel needs.\n");
} catch (error) {
  process.stderr.write(`${error instanceof Error ? error.message : String(error)}\n`);
  process.exitCode = 1;
}
