import type { Drawing } from "./drawing";
import { readDxf } from "./readDxf";
import { readPoints } from "./readPoints";

/**
 * Reads a file that runs are drawn in: an ASCII DXF, or a list of points with the columns Run, East, North and Up, its cells
 * parted by commas, semicolons or tabs.
 *
 * @param name of the file, for messages and its ending
 * @throws InputError for a file that is neither
 */
export function readDrawing(text: string, name: string): Drawing {
  const plain = text.replace(/^\uFEFF/, "");
  const isList = !/\.(dxf|dwg)$/i.test(name) && /^[^\n]*[,;\t]/.test(plain);
  return isList ? readPoints(cellsOf(plain), name) : readDxf(plain);
}

/** Cells of plain lists: quotes may stand around a cell, with doubled quotes for inches inside. */
function cellsOf(text: string): string[][] {
  const lines = text.split(/\r\n|\n|\r/).filter((line) => line.trim() !== "");
  const header = lines[0] ?? "";
  const sign = [",", ";", "\t"].reduce((best, own) =>
    header.split(own).length > header.split(best).length ? own : best,
  );
  const cell = new RegExp(`(?:^|${sign})(?:"((?:[^"]|"")*)"|([^${sign}]*))`, "g");
  return lines.map((line) =>
    [...line.matchAll(cell)].map(([, quoted, bare]) => (quoted?.replace(/""/g, '"') ?? bare ?? "").trim()),
  );
}
