import type { IWorkbookData } from "@univerjs/core";
import { buildDemo } from "./buildDemo";
import { demoBook } from "./demoBook";

/** The demo job as the data the engine opens; made anew each time, for an open grid works in what it is given. */
export const demoData = (): IWorkbookData => buildDemo(demoBook);
