import { posix, win32 } from "node:path";

/** What installing a manifest for this person's Excel comes to. */
export type Sideloading =
  | { how: "copy"; to: string; then: string }
  | { how: "registry"; key: string; name: string; value: string; then: string }
  | { how: "words"; then: string };

const web = `In Excel on the web: open a workbook, Home, Add-ins, More Add-ins, My Add-ins, Upload My Add-in, choose the
file. It stays for this browser until its data is cleared.`;

/**
 * How a manifest is installed on a platform. Excel for Mac reads a folder of its own; Excel for Windows reads a
 * registry key meant for developers (both as Microsoft's documentation and tools have them).
 *
 * @param platform as `process.platform` names it
 * @param manifest absolute path of the manifest, @param xml its text
 */
export function planSideloading(platform: string, home: string, manifest: string, xml: string): Sideloading {
  const id = /<Id>\s*([0-9a-f-]{36})\s*<\/Id>/i.exec(xml)?.[1];
  if (!id) throw new Error(`${manifest} has no <Id>; it is not an add-in's manifest.`);
  if (platform === "darwin") {
    const folder = posix.join(home, "Library/Containers/com.microsoft.Excel/Data/Documents/wef");
    return {
      how: "copy",
      to: posix.join(folder, `${id}.manifest.xml`),
      then: "Restart Excel, then: Home, Add-ins, Raceway Ledger.",
    };
  }
  if (platform === "win32") {
    const key = String.raw`HKCU\SOFTWARE\Microsoft\Office\16.0\WEF\Developer`;
    return {
      how: "registry",
      key,
      name: id,
      value: win32.resolve(manifest),
      then: "Restart Excel, then: Home, Add-ins, Raceway Ledger.",
    };
  }
  return { how: "words", then: `Excel runs on Windows, on a Mac and in the browser; this is ${platform}.\n${web}` };
}
