import { ICommandService, type Injector } from "@univerjs/core";
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
}
