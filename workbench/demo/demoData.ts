import type { IWorkbookData } from "@univerjs/core";
import { openData } from "../workbook/openData";
import { DEMO_NAME, demoContent } from "./demoBook";

/** The demo job as the data the engine opens, made anew each time: an open grid works in the very data it was given. */
export const demoData = (): IWorkbookData => ({ ...openData(demoContent()), name: DEMO_NAME });
