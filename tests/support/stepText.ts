/** A reader of STEP files (ISO 10303-21) for tests, which knows nothing of the writer: entities by their number. */
export type StepData =
  string | number | null | { ref: number } | { type: string; value: StepData[] } | { word: string } | StepData[];

export interface StepEntity {
  type: string;
  values: StepData[];
}

export function readStepText(text: string): Map<number, StepEntity> {
  const entities = new Map<number, StepEntity>();
  const data = /DATA;\n([\s\S]*)\nENDSEC;\nEND-ISO-10303-21;\n$/.exec(text)?.[1];
  if (data === undefined || !text.startsWith("ISO-10303-21;\nHEADER;\n")) throw new Error("no STEP file");
  for (const line of data.split("\n")) {
    const [, number, type, rest] = /^#(\d+)=([A-Z0-9]+)\((.*)\);$/.exec(line) ?? [];
    if (!number) throw new Error(`no entity: ${line}`);
    const reader = new Reader(`${rest})`);
    entities.set(Number(number), { type: type!, values: reader.list() });
    reader.end();
  }
  return entities;
}

class Reader {
  private at = 0;
  constructor(private readonly text: string) {}

  /** What is left up to the closing parenthesis. */
  list(): StepData[] {
    const values: StepData[] = [];
    if (this.take(/\)/y)) return values;
    for (;;) {
      values.push(this.value());
      if (this.take(/\)/y)) return values;
      this.need(/,/y);
    }
  }

  end(): void {
    if (this.at !== this.text.length) throw new Error(`left over: ${this.text.slice(this.at)}`);
  }

  private value(): StepData {
    if (this.take(/\(/y)) return this.list();
    if (this.take(/\$/y)) return null;
    if (this.take(/\*/y)) return { word: "*" };
    const ref = this.take(/#(\d+)/y);
    if (ref) return { ref: Number(ref[1]) };
    const word = this.take(/\.([A-Z_]+)\./y);
    if (word) return { word: word[1]! };
    const string = this.take(/'((?:[\x20-\x26\x28-\x7e]|'')*)'/y);
    if (string) return decoded(string[1]!);
    const typed = this.take(/([A-Z]+)\(/y);
    if (typed) return { type: typed[1]!, value: this.list() };
    return Number(this.need(/-?\d+(?:\.\d*(?:E-?\d+)?)?/y)[0]);
  }

  private take(pattern: RegExp): RegExpExecArray | null {
    pattern.lastIndex = this.at;
    const found = pattern.exec(this.text);
    if (found) this.at += found[0].length;
    return found;
  }

  private need(pattern: RegExp): RegExpExecArray {
    const found = this.take(pattern);
    if (!found) throw new Error(`not STEP: ${this.text.slice(this.at, this.at + 40)}`);
    return found;
  }
}

const decoded = (text: string): string =>
  text
    .replace(/\\X2\\((?:[0-9A-F]{4})+)\\X0\\/g, (_, hex: string) =>
      String.fromCharCode(...hex.match(/.{4}/g)!.map((code) => parseInt(code, 16))),
    )
    .replace(/''/g, "'")
    .replace(/\\\\/g, "\\");
