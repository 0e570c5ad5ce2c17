/** Whole numbers from 0 to `most`, kept so that the next one not below a number is found in a few steps. */
export class NumberSet {
  /** Bits of the numbers; above them, bits of the words that are not empty, up to a single word. */
  private readonly levels: Int32Array[] = [];

  constructor(most: number) {
    let words = most + 1;
    do {
      words = Math.ceil(words / 32);
      this.levels.push(new Int32Array(words));
    } while (words > 1);
  }

  add(number: number): void {
    for (const words of this.levels) {
      words[number >> 5]! |= 1 << (number & 31);
      number >>= 5;
    }
  }

  remove(number: number): void {
    for (const words of this.levels) {
      words[number >> 5]! &= ~(1 << (number & 31));
      if (words[number >> 5] !== 0) return;
      number >>= 5;
    }
  }

  /** The smallest of the numbers that is at least `least`; -1 when there is none. */
  next(least: number): number {
    let at = least;
    for (const [level, words] of this.levels.entries()) {
      const word = at >> 5;
      if (word >= words.length) return -1;
      const here = words[word]! & (-1 << (at & 31));
      if (here !== 0) return this.lowest(level, (word << 5) + lowestBit(here));
      at = word + 1;
    }
    return -1;
  }

  /** The smallest number below bit `at` of a level. */
  private lowest(level: number, at: number): number {
    while (level > 0) {
      level--;
      at = (at << 5) + lowestBit(this.levels[level]![at]!);
    }
    return at;
  }
}

const lowestBit = (word: number): number => 31 - Math.clz32(word & -word);
