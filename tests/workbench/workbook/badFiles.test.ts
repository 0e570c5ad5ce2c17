import { strToU8, zipSync } from "fflate";
import { openXlsx } from "../../../workbench/workbook";
import { builtFunctions, demoWorkbook } from "./demoFile";

const unreadable = "This is not a workbook that can be read: ";

test.each([
  ["nothing", () => new Uint8Array(0), unreadable],
  ["a text", () => strToU8("Run,Route\nA-1,up 4\n".repeat(9)), unreadable],
  ["another zip file", () => zipSync({ "a.txt": strToU8("hello") }), unreadable],
  ["half a workbook", async () => (await demoWorkbook()).slice(0, 20_000), unreadable],
  [
    "a file under a password",
    () => Uint8Array.of(0xd0, 0xcf, 0x11, 0xe0, ...Array<number>(600).fill(0)),
    "The file is locked",
  ],
])(
  "%s is refused in words",
  async (_, bytes, words) => {
    await expect(openXlsx(await bytes(), builtFunctions())).rejects.toThrow(words);
  },
  60_000,
);
