import type { PieceLabel } from "../../src/shop/ticket/pieceLabel";
import type { Ticket } from "../../src/shop/ticket/ticket";
import { lookUpKey } from "../../src/units/names/lookUpKey";
import { benderStrings as t } from "./benderStrings";

/** The piece that a code names, empty where the job has none, and what is to be said of it. */
export function pieceOfCode(tickets: readonly Ticket[], { piece, shape }: PieceLabel): { name: string; words: string } {
  const found = tickets.find(({ name }) => lookUpKey(name) === lookUpKey(piece));
  if (!found) return { name: "", words: t.unknownPiece(piece) };
  const { name, code } = found;
  return { name, words: code === shape ? "" : t.otherShape(name, shape, code) };
}
