import type { Injector } from "@univerjs/core";
import { fromModule, IRPCChannelService, toModule } from "@univerjs/rpc";
import { createStore, get, set, type UseStore } from "idb-keyval";
import { type Results, resultsOf } from "../engine/results";
import { bookDatabase } from "./keep/database";

/** The results of the stored workbook, and of which saving they are. */
interface KeptResults extends Results {
  savedAt: number;
}

const key = "results";
const channel = "raceway-ledger.results";

/** What keeps the results: the worker, which has them and the time. */
interface Keeper {
  keep(savedAt: number): Promise<void>;
}

const database = (): UseStore => createStore(...bookDatabase);

/** The worker's side: writes down what formulas spill when the page asks for it. */
export function keepResultsOnRequest(injector: Injector): void {
  const keeper: Keeper = { keep: (savedAt) => set(key, { savedAt, ...resultsOf(injector) }, database()) };
  injector.get(IRPCChannelService).registerChannel(channel, fromModule(keeper));
}

/** Has the worker write down the results of the workbook saved at that time. */
export function resultKeeper(injector: Injector): Keeper {
  return toModule<Keeper>(injector.get(IRPCChannelService).requestChannel(channel));
}

/** The results of the workbook that was saved at that time; null when they were not kept or are of another. */
export async function readResults(savedAt: number): Promise<Results | null> {
  const kept = await get<KeptResults>(key, database()).catch(() => undefined);
  return kept?.savedAt === savedAt ? kept : null;
}
