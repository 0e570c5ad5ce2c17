import {
  ICommandService,
  ILogService,
  type Injector,
  IUniverInstanceService,
  LogLevel,
  type Univer,
} from "@univerjs/core";
import { UniverFormulaEnginePlugin } from "@univerjs/engine-formula";
import { ChannelService, DataSyncReplicaController, IRemoteInstanceService, IRPCChannelService } from "@univerjs/rpc";
import { UniverSheetsPlugin } from "@univerjs/sheets";
import { type FunctionSet, functionClasses } from "../functions/register";
import { patchCalculation } from "../patches";
import { startEngine } from "../startEngine";
import { PatientReplica } from "./patientReplica";
import { heardOn, type Port } from "./port";
import { ResultSender } from "./resultSender";
import { yieldInTime } from "./yieldInTime";

/** Starts the engine inside a worker: it calculates for the page that started the worker. */
export function calculateForPage(functions: FunctionSet, page: Port = globalThis): Univer {
  const univer = startEngine(LogLevel.WARN);
  univer.registerPlugins([
    [UniverFormulaEnginePlugin, { function: functionClasses(functions), intervalCount: yieldInTime() }],
    [UniverSheetsPlugin, { onlyRegisterFormulaRelatedMutations: true }],
  ]);
  patchCalculation(univer.__getInjector());
  speakWith(page, univer.__getInjector());
  return univer;
}

function speakWith(page: Port, injector: Injector): void {
  const results = new ResultSender();
  const protocol = {
    send: (message: unknown) => page.postMessage(results.pack(message)),
    onMessage: heardOn(page),
  };
  injector.add([IRPCChannelService, { useFactory: () => new ChannelService(protocol) }]);
  injector.add([
    IRemoteInstanceService,
    {
      useFactory: (books: IUniverInstanceService, commands: ICommandService, log: ILogService) =>
        new PatientReplica(books, commands, log, (mutation) => results.hear(mutation)),
      deps: [IUniverInstanceService, ICommandService, ILogService],
    },
  ]);
  injector.add([DataSyncReplicaController]);
  injector.get(DataSyncReplicaController);
}
