import { toCent } from "../../units/money";

/** What an hour of one worker is made of, in money an hour. */
export interface Wage {
  /** Base wage, straight time. */
  readonly base: number;
  /** Fringes an hour, whether paid into the wage or to a fund. They do not grow with overtime. */
  readonly fringes: number;
  /** Of the fringes, what is paid with the wage and taxed as it. */
  readonly paid: number;
  /** Taxes and insurance [% of what is paid]. */
  readonly burden: number;
}

/**
 * What an hour costs with everything on it, to the cent: the wage times its multiple, the fringes once, and the burden on
 * what is paid.
 *
 * @param times 1 for straight time, 1.5 for overtime, 2 for double time
 * @example loadedRate({ base: 37.4, fringes: 17.16, paid: 11.1, burden: 8.45 }, 1.5) //=> 78.94
 */
export function loadedRate({ base, fringes, paid, burden }: Wage, times: number): number {
  const wage = base * times;
  return toCent(wage + fringes + ((wage + paid) * burden) / 100);
}
