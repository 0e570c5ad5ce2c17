import { CommandType, ICommandService, type Injector } from "@univerjs/core";
import { FormulaDataModel } from "@univerjs/engine-formula";
import { SetRangeValuesMutation, SetWorksheetRowAutoHeightMutation } from "@univerjs/sheets";

type Rows = ReturnType<FormulaDataModel["getHiddenRowsFiltered"]>;

/** What an edit brings about that leaves the rows where they are, shown or hidden. */
const harmless = [SetRangeValuesMutation.id, SetWorksheetRowAutoHeightMutation.id];

/**
 * The rows hidden by hand or by a filter, for the formulas that leave those out. The engine asks every row of every
 * sheet; here it does so only after something may have hidden one.
 */
export class HiddenRows {
  private rows: Rows | null = null;
  private readonly model: FormulaDataModel;

  constructor(injector: Injector) {
    this.model = injector.get(FormulaDataModel);
    injector.get(ICommandService).onCommandExecuted(({ id, type }) => {
      if (type === CommandType.MUTATION && id.startsWith("sheet.") && !harmless.includes(id)) this.rows = null;
    });
  }

  read(): Rows {
    return (this.rows ??= this.model.getHiddenRowsFiltered());
  }
}
