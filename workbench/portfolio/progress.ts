/** How often the progress is told [ms]. */
const EVERY = 5000;

/** "120 of 1,000 workbooks read; about 3 minutes left": what is told while there is more to do. */
export function progressWords(done: number, of: number, passed: number): string {
  const left = (passed / done) * (of - done);
  const seconds = Math.ceil(left / 1000);
  const words = seconds < 90 ? `${seconds} s` : `${Math.round(seconds / 60)} minutes`;
  return `${count(done)} of ${count(of)} workbooks read; about ${words} left`;
}

const count = (number: number): string => number.toLocaleString("en-US");

/** Tells the progress now and then, and not when everything is done. */
export function tellProgress(of: number, tell: (words: string) => void): (done: number) => void {
  const began = Date.now();
  let told = began;
  return (done) => {
    const now = Date.now();
    if (done === of || now - told < EVERY) return;
    told = now;
    tell(progressWords(done, of, now - began));
  };
}
