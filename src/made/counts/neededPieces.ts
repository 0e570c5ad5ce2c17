import { remember } from "../../memory/remember";
import { runPieces, type BuiltRun, type Piece } from "../../shop/run/builtRun";
import { builtRows, type BuiltRow, type Job } from "../../shop/job/job";
import { pieceName, pieceShape, shapeCode, type PieceShape } from "../../shop/run/pieceShape";
import { lookUpKey } from "../../units/names/lookUpKey";

/** A piece that a job asks for. */
export interface NeededPiece {
  readonly row: BuiltRow;
  readonly piece: Piece;
  /** Its run and number, as tickets, cutting plans and records name it. */
  readonly name: string;
  readonly shape: PieceShape;
  readonly code: string;
  /** How many: the Quantity of its run. */
  readonly quantity: number;
}

/** Every piece of a job, in the order of its rows. */
export const neededPieces: (job: Job) => readonly NeededPiece[] = remember((job) =>
  builtRows(job).flatMap((row) =>
    shapesOf(row.built).map((shaped): NeededPiece => ({
      ...shaped,
      ...{ row, name: pieceName(row.name, shaped.piece.number), quantity: row.run.quantity },
    })),
  ),
);

const shapesOf = remember((built: BuiltRun) =>
  runPieces(built).map((piece) => {
    const shape = pieceShape(built.run, piece);
    return { piece, shape, code: shapeCode(shape) };
  }),
);

/** Finds pieces by what a record calls them: run and number, or the run alone where it has one piece. */
export class PieceFinder {
  private readonly byName = new Map<string, NeededPiece[]>();

  constructor(pieces: readonly NeededPiece[]) {
    for (const piece of pieces) {
      this.add(piece.name, piece);
      if (runPieces(piece.row.built).length === 1) this.add(piece.row.name, piece);
    }
  }

  /** The pieces of that name: several where runs share a name. */
  find(name: string): readonly NeededPiece[] {
    return this.byName.get(lookUpKey(name)) ?? [];
  }

  private add(name: string, piece: NeededPiece): void {
    const key = lookUpKey(name);
    const found = this.byName.get(key) ?? [];
    if (!found.includes(piece)) this.byName.set(key, [...found, piece]);
  }
}
