/** How the grid behaves under a person's hands where its own way would lose work or surprise who knows Excel. */
import type { Book } from "../../engine";
import { copyResultsAsValues } from "./copyResults";
import { openListsOnDemand } from "./lists";
import { keepFormatsWhenPasting } from "./pasteFormats";
import { pasteTextAsCells } from "./pasteText";
import { returnFromTabs } from "./tabClicks";

export function teachManners({ services }: Book, container: HTMLElement): void {
  openListsOnDemand(services);
  keepFormatsWhenPasting(services);
  pasteTextAsCells(services);
  copyResultsAsValues(services);
  returnFromTabs(container, services);
}
