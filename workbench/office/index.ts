/**
 * `Office` and `Excel` of the local page: the part of Office.js that the pane uses, over the page's own engine. Like
 * Excel they do nothing before `context.sync()` and refuse to be read before `load` and `sync`.
 */
import type { Book } from "../engine";
import { Host } from "./host";
import { RequestContext } from "./requestContext";

/** The global objects a page of Office finds. */
export interface OfficeGlobals {
  Office: Pick<typeof Office, "onReady">;
  Excel: Pick<typeof Excel, "run">;
}

/** Makes the objects for one open workbook; once for each. */
export function officeFor(book: Book): OfficeGlobals {
  const host = new Host(book);
  return { Office: { onReady }, Excel: { run: runner(host) } };
}

const onReady: typeof Office.onReady = async (callback) => {
  const info = { host: "Excel", platform: "OfficeOnline" } as unknown as Awaited<ReturnType<typeof Office.onReady>>;
  await callback?.(info);
  return info;
};

/** `Excel.run`: all that one run changes is one step of undo. */
function runner(host: Host): typeof Excel.run {
  return async <T>(first: unknown, second?: (context: Excel.RequestContext) => Promise<T>): Promise<T> => {
    const batch = (second ?? first) as (context: Excel.RequestContext) => Promise<T>;
    const requests = first instanceof RequestContext ? first : new RequestContext(host);
    try {
      const result = await batch(requests as unknown as Excel.RequestContext);
      await requests.sync();
      return result;
    } finally {
      requests.end();
    }
  };
}
