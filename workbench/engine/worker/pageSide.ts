import { ICommandService, type Injector } from "@univerjs/core";
import { FormulaDataModel, SetArrayFormulaDataMutation } from "@univerjs/engine-formula";
import {
  ChannelService,
  DataSyncPrimaryController,
  type IMessageProtocol,
  IRemoteSyncService,
  IRPCChannelService,
  RemoteSyncPrimaryService,
} from "@univerjs/rpc";
import { concat, of } from "rxjs";
import { heardOn, type Port } from "./port";
import type { SentSpills } from "./resultSender";
import { withChanges } from "./spillChanges";

/** The message by which the engine's two sides tell each other that they listen. */
const listening = { seq: -1, type: 0 };

/**
 * Lets a worker do the calculating: it gets a copy of the workbook, then every change, and sends results back. Comes
 * before the engine's plugins start.
 */
export function calculateIn(worker: Port, injector: Injector): void {
  const protocol: IMessageProtocol = {
    send: (message) => worker.postMessage(message),
    // Taken to listen at once: what waits in the worker's own queue is the workbook as it was when it was sent.
    onMessage: concat(of(listening), heardOn(worker)),
  };
  const receiver = (commands: ICommandService) => new RemoteSyncPrimaryService(commands);
  injector.add([IRPCChannelService, { useFactory: () => new ChannelService(protocol) }]);
  injector.add([IRemoteSyncService, { useFactory: receiver, deps: [ICommandService] }]);
  injector.add([DataSyncPrimaryController]);
  injector.get(DataSyncPrimaryController);
  injector.get(ICommandService).beforeCommandExecuted(({ id, params }) => {
    if (id === SetArrayFormulaDataMutation.id) fillIn(params as SentSpills, injector);
  });
}

/** Makes changed cells whole again with those that stayed. */
function fillIn(spills: SentSpills, injector: Injector): void {
  if (!spills.onlyChanged) return;
  spills.onlyChanged = false;
  const held = injector.get(FormulaDataModel).getArrayFormulaCellData();
  spills.arrayFormulaCellData = withChanges(held, spills.arrayFormulaCellData);
}
