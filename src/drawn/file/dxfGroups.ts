import { InputError } from "../../units/errors";

/** A group of a DXF file: its code and its value. */
export type Group = readonly [code: number, value: string];

/** An object of a DXF file: what it is, and its groups. */
export interface DxfObject {
  readonly type: string;
  readonly groups: readonly Group[];
}

/** Most lines of a drawing that are read: some 100 MB. */
const MOST_LINES = 12_000_000;

/**
 * The objects of a DXF text by the section they stand in; the header's variables as objects of their names.
 * @throws InputError for anything but an ASCII DXF
 */
export function dxfSections(text: string): Map<string, DxfObject[]> {
  if (text.startsWith("AutoCAD Binary DXF")) {
    throw new InputError("this is a binary DXF; save the drawing as an ASCII DXF.");
  }
  if (/^AC10\d\d/.test(text)) throw new InputError("this is a DWG; save the drawing as an ASCII DXF.");
  const lines = text.split(/\r\n|\n|\r/);
  if (lines.length > MOST_LINES)
    throw new InputError(`the drawing has ${lines.length} lines; at most ${MOST_LINES} are read.`);
  const sections = new Map<string, DxfObject[]>();
  let section: DxfObject[] | null = null;
  let open: { type: string; groups: Group[] } | null = null;
  let awaitsName = false;
  let ended = false;
  for (let at = 0; at + 1 < lines.length && !ended; at += 2) {
    const [number, value] = [lines[at]!.trim(), lines[at + 1]!];
    const code = Number(number);
    if (number === "" || !Number.isInteger(code)) {
      throw new InputError(`line ${at + 1} must be a group code of a DXF; it reads "${number.slice(0, 30)}".`);
    }
    const word = value.trim();
    if (code === 0) {
      awaitsName = word === "SECTION";
      if (word === "ENDSEC") section = null;
      ended = word === "EOF";
      open = section && !awaitsName ? { type: word, groups: [] } : null;
      if (open) section!.push(open);
    } else if (awaitsName && code === 2) {
      section = sections.get(word) ?? [];
      sections.set(word, section);
      awaitsName = false;
    } else if (code === 9 && section) {
      open = { type: word, groups: [] };
      section.push(open);
    } else open?.groups.push([code, code === 2 || code === 8 || code === 5 ? value.trim() : word]);
  }
  if (!sections.has("ENTITIES")) throw new InputError("this is no DXF, or a broken one: it has no section ENTITIES.");
  return sections;
}

/** The text of the first group of a code. */
export const textOf = ({ groups }: DxfObject, code: number): string | undefined =>
  groups.find(([own]) => own === code)?.[1];

/** The number of the first group of a code. */
export function numberOf(object: DxfObject, code: number, otherwise: number): number {
  const text = textOf(object, code);
  const value = text === undefined ? otherwise : Number(text);
  if (Number.isFinite(value)) return value;
  throw new InputError(`group ${code} must be a number; it reads "${text}".`);
}
