import { existsSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { unzipSync } from "fflate";
import { readBundle } from "../commandLine/readBundle";
import type { FunctionSet } from "../engine";
import { setUpContent } from "../workbook/content/jobContent";
import type { DrawPng } from "../workbook/content/ticketSheets";
import { writeWorkbook } from "../workbook/makeWorkbook";
import { SAMPLE_DRAWING, sampleDrawing } from "./sampleDrawing";
import { SAMPLES, sampleItems, sampleRows, type Sample } from "./sampleBooks";

/** The bytes of a sample's workbook. */
export async function sampleFile(sample: Sample, functions: FunctionSet, draw?: DrawPng): Promise<Uint8Array> {
  const content = setUpContent(sampleItems(sample), { rows: sampleRows(sample) });
  const { title, tickets: conduit } = sample;
  const wishes = { title, ...(conduit ? { choice: { conduit }, ...(draw && { draw }) } : { withTickets: false }) };
  return (await writeWorkbook(content, functions, wishes)).bytes;
}

/** Writes the samples into a folder; a file that says the same already stays as it is. */
export async function main(
  folder: string,
  { bundle = join(__dirname, ".."), draw }: { bundle?: string; draw?: DrawPng },
) {
  mkdirSync(folder, { recursive: true });
  const functions = readBundle(bundle);
  for (const sample of SAMPLES) {
    const file = join(folder, `${sample.file}.xlsx`);
    const bytes = await sampleFile(sample, functions, draw);
    const same = existsSync(file) && sameContent(readFileSync(file), bytes);
    if (!same) writeFileSync(file, bytes);
    process.stdout.write(`${file}: ${Math.round(bytes.length / 1024)} KB${same ? ", as it was" : ""}\n`);
  }
  const drawing = join(folder, SAMPLE_DRAWING);
  writeFileSync(drawing, sampleDrawing());
  process.stdout.write(`${drawing}: ${Math.round(sampleDrawing().length / 1024)} KB\n`);
}

/** When a file was made is no part of what it says. */
const ITS_DAY = "docProps/core.xml";

function sameContent(one: Uint8Array, other: Uint8Array): boolean {
  const [first, second] = [unzipSync(one), unzipSync(other)];
  const names = Object.keys(first);
  return (
    names.length === Object.keys(second).length &&
    names.every((name) => name === ITS_DAY || Buffer.compare(first[name]!, second[name] ?? new Uint8Array()) === 0)
  );
}
