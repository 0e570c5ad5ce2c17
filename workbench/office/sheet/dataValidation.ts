import { DataValidationRenderMode } from "@univerjs/core";
import { ClientObject, type Readers } from "../base/clientObject";
import { notImplemented } from "../base/officeError";
import type { Area } from "./place";
import type { Requests } from "../base/requests";
import { whole } from "../base/whole";

class DataValidationPart
  extends ClientObject<Area>
  implements Pick<Excel.DataValidation, "errorAlert" | "rule" | "clear">
{
  protected override readonly readers: Readers = {
    rule: () => {
      const found = this.target.cells.native.getDataValidation();
      const source = found?.rule.formula1;
      return source
        ? { list: { source: listOf(source).join(","), inCellDropDown: found.rule.showDropDown !== false } }
        : {};
    },
  };

  get rule(): Excel.DataValidationRule {
    return this.loaded("rule");
  }
  set rule(rule: Excel.DataValidationRule) {
    const source = rule.list?.source;
    if (typeof source !== "string" || source.startsWith("="))
      throw notImplemented("rules other than lists written out");
    const { api } = this.requests.host.book;
    this.change("rule", rule, ({ cells }) => {
      const list = api.newDataValidation().requireValueInList(source.split(","), false, rule.list?.inCellDropDown);
      // Excel's own choice where nothing is said: another value is refused.
      list.setAllowBlank(true).setAllowInvalid(false).setOptions({ renderMode: DataValidationRenderMode.ARROW });
      cells.native.setDataValidation(list.build());
    });
  }

  get errorAlert(): Excel.DataValidationErrorAlert {
    return this.loaded("errorAlert");
  }
  /** Of it only whether another value is refused. */
  set errorAlert(alert: Excel.DataValidationErrorAlert) {
    this.change("errorAlert", alert, ({ cells }) => {
      const found = cells.native.getDataValidation();
      if (!found) return;
      const refused = alert.showAlert && (alert.style === undefined || alert.style === "Stop");
      cells.native.setDataValidation(found.copy().setAllowInvalid(!refused).build());
    });
  }

  clear(): void {
    this.requests.write(() => void this.target.cells.native.setDataValidation(null));
  }
}

/** The grid keeps a list as a JSON array or with commas. */
function listOf(source: string): string[] {
  return source.startsWith("[") ? (JSON.parse(source) as string[]) : source.split(",");
}

export const dataValidationOf = (requests: Requests, find: () => Area): Excel.DataValidation =>
  whole<Excel.DataValidation>(new DataValidationPart(requests, { find, what: "a validation" }), "DataValidation");
