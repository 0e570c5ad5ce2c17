import {
  type IMutationInfo,
  type Injector,
  IUndoRedoService,
  type IUndoRedoItem,
  IUniverInstanceService,
  type Workbook,
} from "@univerjs/core";
import { RemoveSheetMutation, SetSelectionsOperation, SetWorksheetActiveOperation } from "@univerjs/sheets";

/**
 * Gathers changes into one step of undo. (The grid's own gathering takes changes back in the order they were made,
 * which fails where one builds on another.)
 */
export class UndoSteps {
  private open = 0;
  private gathered: IUndoRedoItem[] = [];
  private front: string | undefined;
  private readonly push: (item: IUndoRedoItem) => void;

  constructor(
    private readonly services: Injector,
    private readonly bookId: string,
  ) {
    const undo = services.get(IUndoRedoService);
    this.push = undo.pushUndoRedo.bind(undo);
    const gatherOrPush = (item: IUndoRedoItem) =>
      this.open > 0 && item.unitID === bookId ? void this.gathered.push(item) : this.push(item);
    // Defined, not assigned: what the services hand out is a stand-in whose methods are kept apart from the object.
    Object.defineProperty(undo, "pushUndoRedo", { value: gatherOrPush, configurable: true, writable: true });
  }

  /** Begins a step; steps that overlap are one. Gives the way to end it. */
  begin(): () => void {
    if (this.open === 0) this.front = this.sheetInFront();
    this.open += 1;
    let ended = false;
    return () => {
      if (ended) return;
      ended = true;
      this.open -= 1;
      if (this.open === 0) this.pushGathered();
    };
  }

  private pushGathered(): void {
    const items = this.gathered;
    this.gathered = [];
    if (items.length === 0) return;
    const redoMutations = items.flatMap((item) => item.redoMutations).filter(isNoSelection);
    const undoMutations = items.reverse().flatMap((item) => item.undoMutations);
    const takenBack = this.frontFirst(undoMutations.filter(isNoSelection));
    this.push({ unitID: this.bookId, redoMutations, undoMutations: takenBack });
  }

  /**
   * Before a sheet is taken away, the one that was in front goes back there, for the grid cannot draw a sheet that goes;
   * by then it is there again, if the step had removed it.
   */
  private frontFirst(mutations: readonly IMutationInfo[]): IMutationInfo[] {
    const first = mutations.findIndex(({ id }) => id === RemoveSheetMutation.id);
    if (first < 0) return [...mutations];
    const front = { id: SetWorksheetActiveOperation.id, params: { unitId: this.bookId, subUnitId: this.front } };
    return [...mutations.slice(0, first), front, ...mutations.slice(first)];
  }

  private sheetInFront(): string | undefined {
    const book = this.services.get(IUniverInstanceService).getUnit<Workbook>(this.bookId);
    return book?.getActiveSheet()?.getSheetId();
  }
}

/** Each change would bring its sheet to the front, also one that the next change takes away. */
const isNoSelection = ({ id }: IMutationInfo): boolean => id !== SetSelectionsOperation.id;
