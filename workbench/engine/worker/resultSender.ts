import type { IMutationInfo } from "@univerjs/core";
import {
  type IArrayFormulaUnitCellType,
  type ISetArrayFormulaDataMutationParams,
  type ISetFormulaCalculationResultMutation,
  type ISetFormulaCalculationStartMutation,
  SetArrayFormulaDataMutation,
  SetFormulaCalculationResultMutation,
  SetFormulaCalculationStartMutation,
  SetFormulaCalculationStopMutation,
  SetFormulaDataMutation,
  SetTriggerFormulaCalculationStartMutation,
} from "@univerjs/engine-formula";
import { SetRangeValuesMutation } from "@univerjs/sheets";
import { changedSpills, copyOfSpills } from "./spillChanges";

/** Spilled cells on their way to the page: all of them, or only those that changed. */
export type SentSpills = ISetArrayFormulaDataMutationParams & { onlyChanged?: boolean };

/** The start of a calculation; the page says when it holds other spilled cells than were sent. */
export type StartParams = Omit<ISetFormulaCalculationStartMutation, "options"> & { sendAll?: boolean };

/** A call over the engine's channel, as far as it matters here. */
interface Call {
  method?: string;
  args?: [{ mutationInfo?: IMutationInfo }, ...unknown[]];
}

/** Changes after which the page's spilled cells are still those that were sent. */
const harmless = new Set([
  SetRangeValuesMutation.id,
  SetFormulaDataMutation.id,
  SetFormulaCalculationStartMutation.id,
  SetFormulaCalculationStopMutation.id,
  SetTriggerFormulaCalculationStartMutation.id,
]);

/** Makes the results that a worker sends small. */
export class ResultSender {
  /** The spilled cells that the page holds; null when that is not sure. */
  private held: IArrayFormulaUnitCellType | null = null;

  /** Hears what the page sends. */
  hear({ id, params }: IMutationInfo): void {
    if (!harmless.has(id) || (params as StartParams | undefined)?.sendAll) this.held = null;
  }

  /** The message, with no more in it than the page needs. */
  pack(message: unknown): unknown {
    const { method, args } = message as Call;
    const mutation = method === "syncMutation" ? args?.[0].mutationInfo : undefined;
    if (mutation?.id === SetFormulaCalculationResultMutation.id) {
      // Cells of their own arrive as cells written; the rest is for rules that formulas decide.
      return withParams(message as Call, {
        ...(mutation.params as ISetFormulaCalculationResultMutation),
        unitData: {},
      });
    }
    if (mutation?.id === SetArrayFormulaDataMutation.id) {
      return withParams(message as Call, this.smallest(mutation.params as SentSpills));
    }
    return message;
  }

  private smallest(params: SentSpills): SentSpills {
    const before = this.held;
    this.held = copyOfSpills(params.arrayFormulaCellData);
    if (!before) return params;
    return { ...params, arrayFormulaCellData: changedSpills(before, this.held), onlyChanged: true };
  }
}

function withParams(call: Call, params: object): Call {
  const [{ mutationInfo }, ...rest] = call.args!;
  return { ...call, args: [{ mutationInfo: { ...mutationInfo!, params } }, ...rest] };
}
