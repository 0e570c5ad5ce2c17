/** A value of a STEP file that is written already: a reference, a keyword, a typed value. */
export interface Written {
  readonly written: string;
}

/** A number is a real; whole numbers that are counts go through {@link whole}. null is "not given". */
export type StepValue = number | string | null | Written | readonly StepValue[];

export const whole = (value: number): Written => ({ written: String(value) });
/** A value of an enumeration. */
export const keyword = (name: string): Written => ({ written: `.${name}.` });
/** A value that names its type, as `IFCLABEL('EMT')`. */
export const typed = (type: string, value: StepValue): Written => ({ written: `${type}(${writeStep(value)})` });
/** What the entity itself works out from others. */
export const DERIVED: Written = { written: "*" };

/** A STEP physical file (ISO 10303-21) that grows entity by entity. */
export class StepFile {
  private readonly lines: string[] = [];

  /** Adds an entity. @returns what others refer to it by */
  add(entity: string, ...values: StepValue[]): Written {
    this.lines.push(`#${this.lines.length + 1}=${entity}(${values.map(writeStep).join(",")});`);
    return { written: `#${this.lines.length}` };
  }

  /** The whole file. @param made when, as 2026-12-01T08:00:00 */
  text(schema: string, name: string, made: string): string {
    const header = [
      `FILE_DESCRIPTION(${writeStep([["Conduit runs"], "2;1"]).slice(1, -1)});`,
      `FILE_NAME(${writeStep([name, made, [""], [""], "", "Raceway Ledger", ""]).slice(1, -1)});`,
      `FILE_SCHEMA((${writeStep(schema)}));`,
    ];
    return [
      "ISO-10303-21;",
      "HEADER;",
      ...header,
      "ENDSEC;",
      "DATA;",
      ...this.lines,
      "ENDSEC;",
      "END-ISO-10303-21;",
      "",
    ].join("\n");
  }
}

function writeStep(value: StepValue): string {
  if (value === null) return "$";
  if (typeof value === "number") return real(value);
  if (typeof value === "string") return `'${text(value)}'`;
  if ("written" in value) return value.written;
  return `(${value.map(writeStep).join(",")})`;
}

/** A real has a point: `12.`, `0.5`, `1.E-7`. */
function real(value: number): string {
  const [digits, exponent] = String(value + 0).split("e");
  const pointed = digits!.includes(".") ? digits! : `${digits}.`;
  return exponent === undefined ? pointed : `${pointed}E${exponent.replace("+", "")}`;
}

/** Printable ASCII as it is, a quote and a backslash doubled, everything else by its number in UTF-16 (clause 6.4.3). */
const text = (plain: string): string =>
  plain.replace(/['\\]/g, "$&$&").replace(/[^\x20-\x7e]+/g, (other) => `\\X2\\${[...hex(other)].join("")}\\X0\\`);

const hex = (other: string): string[] =>
  Array.from({ length: other.length }, (_, at) => other.charCodeAt(at).toString(16).toUpperCase().padStart(4, "0"));
