/** An error that a cell holds, such as `#N/A`, in the place of its value. No reader takes it for text or a number. */
export class CellFault {
  /** @param code the error as the cell shows it, for example "#REF!" */
  constructor(readonly code: string) {}

  toString(): string {
    return this.code;
  }
}
