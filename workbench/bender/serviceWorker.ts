/** Keeps the page of the bender for times without a network: what is asked for is fetched anew, and else what was kept. */
const CACHE = "raceway-ledger-bender";
const PAGE = ["./", "bender.js", "bender.css"];

interface WorkerEvent extends Event {
  waitUntil(work: Promise<unknown>): void;
}
interface AskedEvent extends WorkerEvent {
  readonly request: Request;
  respondWith(answer: Promise<Response>): void;
}
const worker = self as unknown as EventTarget & { skipWaiting(): Promise<void>; clients: { claim(): Promise<void> } };

worker.addEventListener("install", (event) => {
  const keep = async () => {
    await (await caches.open(CACHE)).addAll(PAGE);
    await worker.skipWaiting();
  };
  (event as WorkerEvent).waitUntil(keep());
});

worker.addEventListener("activate", (event) => (event as WorkerEvent).waitUntil(worker.clients.claim()));

worker.addEventListener("fetch", (event) => {
  const { request } = event as AskedEvent;
  if (request.method === "GET") (event as AskedEvent).respondWith(answer(request));
});

async function answer(request: Request): Promise<Response> {
  const cache = await caches.open(CACHE);
  try {
    const fresh = await fetch(request);
    if (fresh.ok) await cache.put(request, fresh.clone());
    return fresh;
  } catch (error) {
    const asked = request.mode === "navigate" ? "./" : request;
    const kept = await cache.match(asked, { ignoreSearch: true });
    if (kept) return kept;
    throw error;
  }
}
