/**
 * Parts a whole number of cents by weights, so that the parts add up to it to the cent: each part is its share rounded
 * down, and the cents left go to the largest remainders. Without any weight all of it is in the first part.
 *
 * @param cents whole
 * @param weights at least one; their sum decides, single ones may be below zero
 * @example shareOut(100, [1, 1, 1]) //=> [34, 33, 33]
 */
export function shareOut(cents: number, weights: readonly number[]): number[] {
  const sum = weights.reduce((total, weight) => total + weight, 0);
  if (sum === 0) return weights.map((_, place) => (place === 0 ? cents : 0));
  const exact = weights.map((weight) => (cents * weight) / sum);
  const parts = exact.map(Math.floor);
  const left = cents - parts.reduce((total, part) => total + part, 0);
  const byRemainder = exact
    .map((share, place) => ({ place, rest: share - Math.floor(share) }))
    .sort((a, b) => b.rest - a.rest || a.place - b.place);
  for (const { place } of byRemainder.slice(0, left)) parts[place]!++;
  return parts;
}
