/** The digits of a GlobalId (buildingSMART, IfcGloballyUniqueId). */
const DIGITS = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz_$";

/**
 * A GlobalId for a key: 128 bits in 22 digits, always the same for the same key, so that what is written again replaces
 * what was written before. Four FNV-1a hashes of 32 bits, each mixed once more; two keys meet by chance once in 2¹²⁸ pairs.
 */
export function globalId(key: string): string {
  const parts = [0, 1, 2, 3].map((seed) => BigInt(hash(`${seed} ${key} ${seed}`, 0x811c9dc5 ^ (seed * 0x9e3779b9))));
  let bits = parts.reduce((all, part) => (all << 32n) | part, 0n);
  let digits = "";
  for (let place = 0; place < 22; place += 1) {
    digits = DIGITS[Number(bits & 63n)]! + digits;
    bits >>= 6n;
  }
  return digits;
}

function hash(text: string, seed: number): number {
  let value = seed >>> 0;
  for (let at = 0; at < text.length; at += 1) value = Math.imul(value ^ text.charCodeAt(at), 0x01000193);
  value = Math.imul(value ^ (value >>> 16), 0x85ebca6b);
  value = Math.imul(value ^ (value >>> 13), 0xc2b2ae35);
  return (value ^ (value >>> 16)) >>> 0;
}
