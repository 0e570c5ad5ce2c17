import { CommandType, ICommandService } from "@univerjs/core";
import type { Book } from "../../../workbench/engine";
import { OfficeError } from "../../../workbench/office/base/officeError";

/**
 * Protects a sheet as Excel does: whatever would change its cells, rows, columns or tables is refused there and then, with
 * what stood before it in the same request done.
 * @returns opens the sheet again
 */
export function protect(book: Book, sheet: string): () => void {
  const { id: sheetId } = book.sheet(sheet);
  const listening = book.services.get(ICommandService).beforeCommandExecuted(({ type, id, params }, options) => {
    const isChange = type !== CommandType.OPERATION && !id.startsWith("formula.") && !options?.onlyLocal;
    if (!isChange || (params as { subUnitId?: string } | undefined)?.subUnitId !== sheetId) return;
    throw new OfficeError("AccessDenied", "The sheet is protected.");
  });
  return () => listening.dispose();
}
