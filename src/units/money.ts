const FORMAT = new Intl.NumberFormat("en-US", { minimumFractionDigits: 2, maximumFractionDigits: 3 });

/**
 * An amount of money as it is read: cents always, a third decimal where there is one; no currency is assumed.
 * @example showMoney(1155.4) //=> "1,155.40"
 */
export const showMoney = (amount: number): string => FORMAT.format(amount);

/** Digits of a double that are sure: a sum such as 1.005 · 100 is a half, not a hair below it. */
const SURE_DIGITS = 15;

/**
 * An amount of money to the cent, a half away from zero: what is printed is what is added up.
 * @example toCent(13.962) //=> 13.96
 */
export const toCent = (amount: number): number =>
  (Math.sign(amount) * Math.round(Number((Math.abs(amount) * 100).toPrecision(SURE_DIGITS)))) / 100;
