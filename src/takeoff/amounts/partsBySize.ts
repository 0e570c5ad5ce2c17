import { sameParts } from "../../memory/lists";
import { remember } from "../../memory/remember";
import type { RowWork } from "./jobWork";

/** Runs by raceway and size. An edit of one run leaves the parts of all other sizes the same objects. */
export const partsBySize = remember((works: readonly RowWork[]) => sameParts(works, ({ sizeKey }) => sizeKey));

/** Runs of one raceway and size by the stick they ask for. */
export const partsByStick = remember((works: readonly RowWork[]) => sameParts(works, ({ run }) => String(run.stick)));
