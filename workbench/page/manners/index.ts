/** How the grid behaves under a person's hands where its own way would lose work or surprise who knows Excel. */
import type { Book } from "../../engine";
import { copyResultsAsValues } from "./copyResults";
import { drawListsAsColumns, leaveOtherValuesUnmarked, openListsOnDemand } from "./lists";
import { keepFormatsWhenPasting } from "./pasteFormats";
import { pasteTextAsCells } from "./pasteText";
import { leaveGoneSheetsAlone } from "./goneSheets";
import { fitRowHeights } from "./rowHeights";
import { returnFromTabs } from "./tabClicks";

export function teachManners(book: Book, container: HTMLElement): void {
  const { services } = book;
  openListsOnDemand(services);
  drawListsAsColumns(services);
  leaveOtherValuesUnmarked(services);
  keepFormatsWhenPasting(services);
  pasteTextAsCells(services);
  copyResultsAsValues(services);
  returnFromTabs(container, services);
  leaveGoneSheetsAlone();
  fitRowHeights(book);
}
