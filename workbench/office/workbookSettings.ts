import {
  CommandType,
  type ICommand,
  ICommandService,
  IResourceManagerService,
  UniverInstanceType,
} from "@univerjs/core";
import type { Book } from "../engine";

/** Where the settings lie in the saved workbook. */
const resource = "SHEET_RACEWAY_LEDGER_SETTINGS_PLUGIN";

type Values = Record<string, unknown>;

/** Values that add-ins keep in the workbook. They are saved with it and are no matter for undo, as in Excel. */
export class WorkbookSettings {
  private values: Values = {};

  constructor(private readonly book: Book) {
    const { services } = book;
    services.get(IResourceManagerService).registerPluginResource<Values>({
      pluginName: resource,
      businesses: [UniverInstanceType.UNIVER_SHEET],
      toJson: () => JSON.stringify(this.values),
      parseJson: (json) => JSON.parse(json) as Values,
      onLoad: (_, values) => {
        this.values = values;
      },
      onUnLoad: () => {
        this.values = {};
      },
    });
    services.get(ICommandService).registerCommand(this.change);
  }

  keys(): string[] {
    return Object.keys(this.values);
  }

  has(key: string): boolean {
    return Object.hasOwn(this.values, key);
  }

  get(key: string): unknown {
    return this.values[key];
  }

  /** Keeps a value; undefined takes the key away. */
  set(key: string, value: unknown): void {
    const copy: unknown = value === undefined ? undefined : JSON.parse(JSON.stringify(value));
    this.book.services.get(ICommandService).syncExecuteCommand(this.change.id, { key, value: copy });
  }

  /** A mutation, so that whoever watches the workbook for changes saves it. */
  private readonly change: ICommand<{ key: string; value: unknown }> = {
    id: "raceway-ledger.mutation.set-setting",
    type: CommandType.MUTATION,
    handler: (_, params) => {
      if (!params) return false;
      const values = { ...this.values, [params.key]: params.value };
      if (params.value === undefined) delete values[params.key];
      this.values = values;
      return true;
    },
  };
}
