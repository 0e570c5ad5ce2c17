import { readFileSync } from "node:fs";
import { join } from "node:path";
import { planSideloading } from "../../tools/sideload/plan";

const xml = readFileSync(join(__dirname, "../../manifest.xml"), "utf8");
const id = "5b0b9e5e-6a1f-4a57-9f0c-6c2c6d3a71d4";

/** Microsoft, "Sideload Office Add-ins on Mac": the wef folder in Excel's container. */
test("on a Mac the manifest is copied where Excel looks", () => {
  expect(planSideloading("darwin", "/Users/pat", "/home/pat/manifest.xml", xml)).toMatchObject({
    how: "copy",
    to: `/Users/pat/Library/Containers/com.microsoft.Excel/Data/Documents/wef/${id}.manifest.xml`,
  });
});

/** The key that Microsoft's office-addin-dev-settings writes, read in its source. */
test("on Windows the manifest is named in the developer key", () => {
  expect(planSideloading("win32", String.raw`C:\Users\pat`, String.raw`C:\ledger\manifest.xml`, xml)).toMatchObject({
    how: "registry",
    key: String.raw`HKCU\SOFTWARE\Microsoft\Office\16.0\WEF\Developer`,
    name: id,
    value: String.raw`C:\ledger\manifest.xml`,
  });
});

test("elsewhere the steps for Excel on the web are told", () => {
  expect(planSideloading("linux", "/home/pat", "/x/manifest.xml", xml).then).toContain("Upload My Add-in");
});

test("a file that is no manifest is refused", () => {
  expect(() => planSideloading("darwin", "/", "/x/other.xml", "<a/>")).toThrow("/x/other.xml has no <Id>");
});
