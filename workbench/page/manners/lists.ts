import {
  DataValidationErrorStyle,
  DataValidationType,
  type Injector,
  IUniverInstanceService,
  toDisposable,
} from "@univerjs/core";
import { IEditorBridgeService, ISheetCellDropdownManagerService } from "@univerjs/preset-sheets-core";
import { DataValidatorRegistryService } from "@univerjs/preset-sheets-data-validation";

/**
 * Lists to choose from open on demand, by the arrow in their cell. By itself the grid opens them as soon as somebody
 * types into such a cell, and they then take the keys that follow.
 */
export function openListsOnDemand(services: Injector): void {
  const lists = services.get(ISheetCellDropdownManagerService);
  const editor = services.get(IEditorBridgeService);
  const show = lists.showDropdown.bind(lists);
  const showOnDemand: typeof show = (list) => {
    if (!editor.isVisible().visible) return show(list);
    list.onHide?.();
    return toDisposable(() => undefined);
  };
  // Defined, not assigned: what the services hand out is a stand-in whose methods are kept apart from the object.
  Object.defineProperty(lists, "showDropdown", { value: showOnDemand, configurable: true, writable: true });
}

/** A cell with a list is drawn in the style of its column, as every other cell; by itself the grid knows its own only. */
export function drawListsAsColumns(services: Injector): void {
  const drawn = services.get(DataValidatorRegistryService).getValidatorItem(DataValidationType.LIST)?.canvasRender;
  if (!drawn) return;
  const books = services.get(IUniverInstanceService);
  const draw = drawn.drawWith.bind(drawn);
  drawn.drawWith = (context, info, ...rest) => {
    const sheet = books.getUniverSheetInstance(info.unitId)?.getSheetBySheetId(info.subUnitId);
    return draw(context, sheet ? { ...info, style: sheet.getComposedCellStyle(info.row, info.col) } : info, ...rest);
  };
}

/** A list that lets other values stand, such as another spelling, marks none of them as wrong. */
export function leaveOtherValuesUnmarked(services: Injector): void {
  const list = services.get(DataValidatorRegistryService).getValidatorItem(DataValidationType.LIST);
  if (!list) return;
  const isValid = list.validator.bind(list);
  list.validator = async (cell, rule) => rule.errorStyle !== DataValidationErrorStyle.STOP || isValid(cell, rule);
}
