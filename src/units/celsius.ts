import { InputError, quoteValue } from "./errors";
import { asNumber } from "./number";
import { withinLimits, type Limits } from "./limits";

const WITH_UNIT = /^\s*([+-]?[\d.]+)\s*°?\s*([cf])\s*$/i;

/**
 * Reads a temperature [°C]: a number is °C, text may say its unit (`104 F`, `40 °C`).
 *
 * @throws InputError naming the argument, the limit and the value
 * @example readCelsius("104 F", "Ambient") //=> 40
 */
export function readCelsius(value: unknown, argument: string, limits: Limits = {}): number {
  const [, digits, unit] = (typeof value === "string" && WITH_UNIT.exec(value)) || [];
  const number = asNumber(digits ?? value);
  if (number === undefined) {
    throw new InputError(
      `${argument} must be a temperature in °C, or with its unit, as in 104 F; got ${quoteValue(value)}.`,
    );
  }
  return withinLimits(unit?.toLowerCase() === "f" ? (number - 32) / 1.8 : number, argument, limits);
}
