import { ICommandService, type Injector } from "@univerjs/core";
import {
  FormulaDataModel,
  type IArrayFormulaRangeType,
  type IArrayFormulaUnitCellType,
  SetArrayFormulaDataMutation,
} from "@univerjs/engine-formula";

/** What formulas spill: it is in no snapshot, and worked out anew whenever a workbook opens. */
export interface Results {
  ranges: IArrayFormulaRangeType;
  cells: IArrayFormulaUnitCellType;
}

export function resultsOf(injector: Injector): Results {
  const model = injector.get(FormulaDataModel);
  return { ranges: model.getArrayFormulaRange(), cells: model.getArrayFormulaCellData() };
}

/** Shows results of an earlier visit until they are worked out anew. */
export function showResults(injector: Injector, { ranges, cells }: Results): void {
  const params = { arrayFormulaRange: ranges, arrayFormulaCellData: cells };
  injector.get(ICommandService).syncExecuteCommand(SetArrayFormulaDataMutation.id, params, { onlyLocal: true });
}
