import type { Requests } from "./requests";
import { whole } from "./whole";

/**
 * An event of Office: a handler is added at the next sync, and called when the change is through.
 *
 * @param listen begins to listen and gives the way to stop
 */
export function officeEvent<Given extends Partial<Args>, Args extends object>(
  requests: Requests,
  listen: (tell: (args: Given) => void) => () => void,
): OfficeExtension.EventHandlers<Args> {
  const stops = new Map<(args: Args) => Promise<unknown>, () => void>();
  const remove = (handler: (args: Args) => Promise<unknown>) =>
    requests.later(() => {
      stops.get(handler)?.();
      stops.delete(handler);
    });
  const add = (handler: (args: Args) => Promise<unknown>) => {
    requests.later(() => {
      const tell = (args: Given) => setTimeout(() => void handler(whole<Args>(args as never, "EventArgs")), 0);
      stops.set(handler, listen(tell));
    });
    const result: Pick<OfficeExtension.EventHandlerResult<Args>, "context" | "remove"> = {
      context: requests as unknown as OfficeExtension.ClientRequestContext,
      remove: () => remove(handler),
    };
    return result as OfficeExtension.EventHandlerResult<Args>;
  };
  return whole<OfficeExtension.EventHandlers<Args>>({ add, remove }, "EventHandlers");
}
