import type { Sheet } from "../engine";
import type { Host } from "./host";
import { type Lookup, Requests } from "./base/requests";
import { workbookOf } from "./workbook";
import { worksheetOf } from "./sheet/worksheet";

/** What `Excel.run` hands to a batch: its requests, and the workbook they are about. */
export class RequestContext extends Requests {
  readonly workbook: Excel.Workbook;

  constructor(host: Host) {
    super(host);
    this.workbook = workbookOf(this);
  }

  worksheet(finding: Lookup<Sheet>): Excel.Worksheet {
    return worksheetOf(this, finding);
  }
}
