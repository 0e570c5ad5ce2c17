import { type Injector, IUndoRedoService, type IUndoRedoItem } from "@univerjs/core";

/**
 * Gathers changes into one step of undo. (The grid's own gathering takes changes back in the order they were made,
 * which fails where one builds on another.)
 */
export class UndoSteps {
  private open = 0;
  private gathered: IUndoRedoItem[] = [];
  private readonly push: (item: IUndoRedoItem) => void;

  constructor(
    services: Injector,
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
    this.push({
      unitID: this.bookId,
      redoMutations: items.flatMap(({ redoMutations }) => redoMutations),
      undoMutations: [...items].reverse().flatMap(({ undoMutations }) => undoMutations),
    });
  }
}
