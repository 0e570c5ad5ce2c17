import { InputError, quoteValue } from "../../units/errors";
import type { Ticket } from "./ticket";

/** What stands in the code of a ticket or a sticker, to be read by a camera without any network. */
export interface PieceLabel {
  readonly job: string;
  /** Run and number of the piece: TH-01/2. */
  readonly piece: string;
  /** Code of its shape. */
  readonly shape: string;
  readonly quantity: number;
}

/** The label of a ticket's piece. */
export const labelOf = ({ run, name, code }: Ticket): PieceLabel => ({
  ...{ job: run.job, piece: name, shape: code, quantity: run.quantity },
});

/** A name in a line of its own: what would break the line is a space. */
const oneLine = (name: string): string => name.replace(/\s+/g, " ").trim();

/**
 * A label as plain lines, which any reader of codes shows in words.
 * @example labelText({ job: "Ferry", piece: "TH-01/2", shape: "GMP3-TN8Y", quantity: 6 })
 * //=> "Piece: TH-01/2\nShape: GMP3-TN8Y\nMake: 6\nJob: Ferry"
 */
export const labelText = ({ job, piece, shape, quantity }: PieceLabel): string =>
  [`Piece: ${oneLine(piece)}`, `Shape: ${shape}`, `Make: ${quantity}`, `Job: ${oneLine(job)}`].join("\n");

/** Reads what {@link labelText} wrote. @throws InputError for any other text */
export function readLabel(text: string): PieceLabel {
  const [, piece, shape, quantity, job] =
    /^Piece: (.+)\nShape: (\S+)\nMake: (\d+)\nJob:(?: (.*))?$/.exec(text.trimEnd()) ?? [];
  if (piece === undefined || shape === undefined) {
    throw new InputError(`This is not the code of a piece; it reads ${quoteValue(text.slice(0, 60))}.`);
  }
  return { job: job ?? "", piece, shape, quantity: Number(quantity) };
}
