import { InputError, quoteValue } from "./errors";
import { withinLimits, isOmitted } from "./limits";
import { show, showInches } from "./show";

export const DENOMINATORS = [2, 4, 8, 16, 32, 64] as const;
export type Denominator = (typeof DENOMINATORS)[number];
export const LENGTH_STYLES = ["feet", "inches", "mm"] as const;
export type LengthStyle = (typeof LENGTH_STYLES)[number];

/** Lengths up to here keep their sixty-fourths exact [in]. */
const LONGEST = 1e9;

/**
 * Writes a length rounded to the nearest part of an inch (halves go away from zero), or to the nearest millimeter.
 *
 * A length that rounds to nothing is written `0"`, without a sign.
 *
 * @param inches [in]
 * @param denominator parts of an inch: 2, 4, 8, 16, 32 or 64; not used for mm
 * @param style "feet" for feet and inches, "inches" for inches only, "mm" for millimeters
 * @throws InputError for a length that is not finite or beyond a thousand million inches
 * @example formatLength(40.49) //=> 3' 4-1/2"
 */
export function formatLength(inches: number, denominator: Denominator = 16, style: LengthStyle = "feet"): string {
  const size = Math.abs(withinLimits(inches, "length", { min: -LONGEST, max: LONGEST }, " in."));
  if (style === "mm") return withSign(inches, Math.round(size * 25.4), (mm) => `${mm} mm`);
  return withSign(inches, Math.round(size * denominator), (parts) => inchText(parts, denominator, style));
}

const withSign = (value: number, units: number, write: (units: number) => string): string =>
  (value < 0 && units > 0 ? "-" : "") + write(units);

function inchText(parts: number, denominator: number, style: LengthStyle): string {
  const whole = Math.floor(parts / denominator);
  const feet = style === "feet" ? Math.floor(whole / 12) : 0;
  const inches = whole - 12 * feet;
  const fraction = fractionText(parts - whole * denominator, denominator);
  const showInches = feet > 0 || inches > 0 || fraction === "";
  const inchPart = [showInches ? String(inches) : "", fraction].filter((part) => part !== "").join("-");
  return `${feet > 0 ? `${feet}' ` : ""}${inchPart}"`;
}

function fractionText(parts: number, denominator: number): string {
  if (parts === 0) return "";
  return parts % 2 === 0 ? fractionText(parts / 2, denominator / 2) : `${parts}/${denominator}`;
}

/** @throws InputError naming the argument and the denominators there are; an empty value gives 16 */
export function readDenominator(value: unknown, argument = "denominator"): Denominator {
  if (isOmitted(value)) return 16;
  const found = DENOMINATORS.find((denominator) => denominator === Number(value));
  if (found !== undefined && typeof value !== "boolean") return found;
  throw new InputError(`${argument} must be one of ${DENOMINATORS.join(", ")}; got ${quoteValue(value)}.`);
}

/** @throws InputError naming the argument and the styles there are; an empty value gives feet */
export function readLengthStyle(value: unknown, argument = "style"): LengthStyle {
  if (isOmitted(value)) return "feet";
  const found = LENGTH_STYLES.find((style) => style === String(value).trim().toLowerCase());
  if (found !== undefined) return found;
  throw new InputError(`${argument} must be one of ${LENGTH_STYLES.join(", ")}; got ${quoteValue(value)}.`);
}

/** In what lengths are told: as each route is written (inches but for a metric route), or always the same. */
export const LENGTH_UNITS = ["as written", ...LENGTH_STYLES] as const;
export type LengthUnit = (typeof LENGTH_UNITS)[number];

/** A length [in] in words, to that many decimals of an inch or as many as the unit is read to. */
export type ShowLength = (inches: number, digits?: number) => string;

/** How a job tells lengths. */
export interface Lengths {
  readonly unit: LengthUnit;
  /** In messages, findings and notes. */
  readonly show: ShowLength;
  /** As a tape is read: to the nearest 1/16 in. or millimeter. */
  readonly tape: (inches: number) => string;
}

/** Sixteenths, as a tape has them; what would be none of them in decimals, for something is not nothing. */
const sixteenths: ShowLength = (inches, digits) =>
  inches !== 0 && Math.round(Math.abs(inches) * 16) === 0 ? showInches(inches, digits) : formatLength(inches);

const millimeters: ShowLength = (inches) => `${show(inches * 25.4, 1)} mm`;

const LENGTHS: Readonly<Record<LengthUnit, Lengths>> = {
  "as written": { unit: "as written", show: showInches, tape: (inches) => formatLength(inches) },
  feet: { unit: "feet", show: sixteenths, tape: (inches) => formatLength(inches) },
  inches: { unit: "inches", show: showInches, tape: (inches) => formatLength(inches, 16, "inches") },
  mm: { unit: "mm", show: millimeters, tape: (inches) => formatLength(inches, 16, "mm") },
};

/**
 * How lengths are told in a unit.
 *
 * @example lengthsIn("feet").show(40.5) //=> 3' 4-1/2"
 * @example lengthsIn("mm").show(40.5) //=> "1028.7 mm"
 */
export const lengthsIn = (unit: LengthUnit): Lengths => LENGTHS[unit];

/** How lengths are told where nobody says in what. */
export const AS_WRITTEN: Lengths = LENGTHS["as written"];
