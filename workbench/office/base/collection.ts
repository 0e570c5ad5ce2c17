import { ClientObject, type Readers } from "./clientObject";
import { notLoaded } from "./officeError";
import type { Requests } from "./requests";

/** Several objects of one kind; which ones there are is known once `items` is loaded and synced. */
export abstract class Collection<Item extends { load(names?: string): unknown }> extends ClientObject<true> {
  protected override readonly readers: Readers = {};
  private readonly asked = new Set<string>();
  private made: Item[] | undefined;

  constructor(
    requests: Requests,
    what: string,
    private readonly list: () => Item[],
  ) {
    super(requests, { find: () => true, what });
  }

  get items(): Item[] {
    if (!this.made) throw notLoaded("items");
    return this.made;
  }

  /** "items/name" and "name" both ask for the name of each item, "items" for all that each has. */
  protected override loadPath(path: string): void {
    this.asked.add(path.replace(/^items(\/|$)/, ""));
    this.requests.read(() => {
      this.made = this.list();
      for (const item of this.made) for (const names of this.asked) item.load(names === "" ? undefined : names);
    });
  }
}
