import { fromEvent, map, type Observable } from "rxjs";

/** Where messages go to and come from: a worker, or inside a worker its page. */
export interface Port {
  postMessage(message: unknown): void;
  addEventListener(type: "message", listener: (event: MessageEvent<unknown>) => void): void;
  removeEventListener(type: "message", listener: (event: MessageEvent<unknown>) => void): void;
}

export function heardOn(port: Port): Observable<unknown> {
  return fromEvent<MessageEvent<unknown>>(port as Worker, "message").pipe(map(({ data }) => data));
}
