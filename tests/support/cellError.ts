/** The code and the message a cell gets from a worksheet function, for example "#VALUE! size must be …". */
export function cellError(call: () => unknown): string {
  try {
    return `no error: ${JSON.stringify(call())}`;
  } catch (error) {
    const { code, message } = error as { code: string; message: string };
    return `${code} ${message}`;
  }
}
