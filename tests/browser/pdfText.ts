/** Text of the pages of a PDF as Chromium writes it: fonts with a table from glyphs to characters, flat page trees. */
import { inflateSync } from "node:zlib";

interface PdfObject {
  head: string;
  stream: string;
}

/** The characters of each page in the order they were drawn, without white space. */
export function pdfPages(pdf: Buffer): string[] {
  const objects = readObjects(pdf);
  const at = (reference: string | undefined): PdfObject | undefined => objects.get(Number(reference));
  return [...objects.values()]
    .filter(({ head }) => /\/Type \/Page\b(?!s)/.test(head))
    .map(({ head }) => {
      const resources = /\/Resources (\d+) 0 R/.exec(head);
      const fonts = (resources ? at(resources[1])?.head : head) ?? "";
      const tables = new Map(
        [...fonts.matchAll(/\/(F\d+) (\d+) 0 R/g)].map(([, name, reference]) => {
          const unicode = /\/ToUnicode (\d+) 0 R/.exec(at(reference)?.head ?? "");
          return [name!, characters(at(unicode?.[1])?.stream ?? "")];
        }),
      );
      const content = /\/Contents (\d+) 0 R/.exec(head);
      return drawnText(at(content?.[1])?.stream ?? "", tables).replace(/\s/g, "");
    });
}

function readObjects(pdf: Buffer): Map<number, PdfObject> {
  const text = pdf.toString("latin1");
  const objects = new Map<number, PdfObject>();
  for (const found of text.matchAll(/(?:^|\n)(\d+) 0 obj\r?\n([\s\S]*?)endobj/g)) {
    const [, number, body = ""] = found;
    const begin = /stream\r?\n/.exec(body);
    const head = begin ? body.slice(0, begin.index) : body;
    const length = Number(/\/Length (\d+)/.exec(head)?.[1] ?? 0);
    const bytes = Buffer.from(begin ? body.slice(begin.index + begin[0].length).slice(0, length) : "", "latin1");
    const flat = /\/FlateDecode/.test(head) && !/\/Subtype \/Image/.test(head) ? inflateSync(bytes) : bytes;
    objects.set(Number(number), { head, stream: flat.toString("latin1") });
  }
  return objects;
}

/** Glyph number → text, from the ranges and single glyphs of a font's table. */
function characters(table: string): Map<number, string> {
  const known = new Map<number, string>();
  const decode = (hex: string): string => Buffer.from(hex, "hex").swap16().toString("utf16le");
  for (const [, part = ""] of table.matchAll(/beginbfchar([\s\S]*?)endbfchar/g)) {
    for (const [, glyph, text] of part.matchAll(/<(\w+)> <(\w+)>/g)) known.set(parseInt(glyph!, 16), decode(text!));
  }
  for (const [, part = ""] of table.matchAll(/beginbfrange([\s\S]*?)endbfrange/g)) {
    for (const [, from, to, text] of part.matchAll(/<(\w+)> <(\w+)> <(\w+)>/g)) {
      const [first, last, start] = [from!, to!, text!].map((hex) => parseInt(hex, 16)) as [number, number, number];
      for (let glyph = first; glyph <= last; glyph++) known.set(glyph, String.fromCodePoint(start + glyph - first));
    }
  }
  return known;
}

function drawnText(content: string, fonts: ReadonlyMap<string, ReadonlyMap<number, string>>): string {
  let font: ReadonlyMap<number, string> = new Map();
  let text = "";
  for (const [, name, shown] of content.matchAll(/\/(F\d+) [\d.]+ Tf|((?:<\w+>|\[[^\]]*\]) T[jJ])/g)) {
    if (name) font = fonts.get(name) ?? new Map();
    for (const [, hex = ""] of (shown ?? "").matchAll(/<(\w+)>/g)) {
      for (const [glyph] of hex.matchAll(/\w{4}/g)) text += font.get(parseInt(glyph, 16)) ?? "\ufffd";
    }
  }
  return text;
}
