import type { RecordCells } from "../../src/made/records/recordsText";
import type { Ticket } from "../../src/shop/ticket/ticket";
import type { Outcome } from "./outcome";

/** An Id that no other record has: the moment, and enough chance for many devices. */
const newId = (): string => `${Date.now().toString(36)}-${Math.random().toString(36).slice(2, 10)}`;

/** Today where the device is: 2026-12-01. */
function today(): string {
  const now = new Date();
  return [now.getFullYear(), now.getMonth() + 1, now.getDate()].map((part) => String(part).padStart(2, "0")).join("-");
}

/** The rows of Made for a piece that was made or scrapped: the first counts it, one more for each further measured bend. */
export function recordsOf(ticket: Ticket, { good, note, measured }: Outcome, by: string): RecordCells[] {
  const { run, name, code } = ticket;
  const about = { Date: today(), Piece: name, By: by.trim(), Crew: run.crew, Raceway: run.raceway, Size: run.size };
  const bends = measured.map(({ bend, dial, angle }) => ({
    Bend: bend,
    "Dial reached": dial,
    "Angle measured": angle,
  }));
  return [bends[0] ?? {}, ...bends.slice(1)].map((bend, place) => ({
    ...about,
    Good: place === 0 && good ? 1 : 0,
    Scrapped: place === 0 && !good ? 1 : 0,
    Shape: code,
    Note: place === 0 ? note : "",
    Id: newId(),
    ...bend,
  }));
}
