import type { RecordCells } from "../../src/made/records/recordsText";

/** What this device keeps: the text of the job it works on, and its records until they are in Made. */
const JOB = "raceway-ledger.bender.job";
const RECORDS = "raceway-ledger.bender.records";

export const keptJob = (): string => localStorage.getItem(JOB) ?? "";

/** @throws where the device keeps nothing */
export const keepJob = (text: string): void => localStorage.setItem(JOB, text);

/** Records as they were kept; none where there are none. @throws where what is kept cannot be read, so that it is never written over */
export function keptRecords(): RecordCells[] {
  const text = localStorage.getItem(RECORDS);
  const read: unknown = text === null ? [] : JSON.parse(text);
  if (!Array.isArray(read)) throw new Error(`what this device keeps under ${RECORDS} cannot be read.`);
  return read as RecordCells[];
}

/** Keeps records behind those that are kept, another tab's too. @throws where the device keeps nothing */
export function keepRecords(records: readonly RecordCells[]): RecordCells[] {
  const all = [...keptRecords(), ...records];
  localStorage.setItem(RECORDS, JSON.stringify(all));
  return all;
}

/** Drops the records of these Ids; what came after them stays. */
export function dropRecords(ids: ReadonlySet<unknown>): RecordCells[] {
  const left = keptRecords().filter(({ Id }) => !ids.has(Id));
  localStorage.setItem(RECORDS, JSON.stringify(left));
  return left;
}
