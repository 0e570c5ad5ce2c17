import { type Injector, IUndoRedoService, type IUndoRedoItem } from "@univerjs/core";

/**
 * Gathers changes into one step of undo. (The grid's own gathering takes changes back in the order they were made,
 * which fails where one builds on another.)
 */
export class UndoSteps {
  private readonly undo: IUndoRedoService;
  private open = 0;
  private gathered: IUndoRedoItem[] = [];

  constructor(
    services: Injector,
    private readonly bookId: string,
  ) {
    this.undo = services.get(IUndoRedoService);
  }

  /** Begins a step; steps that overlap are one. Gives the way to end it. */
  begin(): () => void {
    if (this.open++ === 0) this.gather();
    let ended = false;
    return () => {
      if (ended) return;
      ended = true;
      if (--this.open === 0) this.push();
    };
  }

  private gather(): void {
    const { undo } = this;
    const push = undo.pushUndoRedo.bind(undo);
    undo.pushUndoRedo = (item) => (item.unitID === this.bookId ? void this.gathered.push(item) : push(item));
  }

  private push(): void {
    // Only the wrapper of this object goes; the grid's own method shows again.
    delete (this.undo as Partial<IUndoRedoService>).pushUndoRedo;
    const items = this.gathered;
    this.gathered = [];
    if (items.length === 0) return;
    this.undo.pushUndoRedo({
      unitID: this.bookId,
      redoMutations: items.flatMap(({ redoMutations }) => redoMutations),
      undoMutations: [...items].reverse().flatMap(({ undoMutations }) => undoMutations),
    });
  }
}
