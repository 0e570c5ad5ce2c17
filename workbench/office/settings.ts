import { ClientObject, type Readers } from "./base/clientObject";
import { Collection } from "./base/collection";
import type { Lookup, Requests } from "./base/requests";
import { whole } from "./base/whole";

class SettingPart
  extends ClientObject<string>
  implements Pick<Excel.Setting, "delete" | "isNullObject" | "key" | "value">
{
  protected override readonly readers: Readers = {
    key: () => this.target,
    value: () => this.requests.host.settings.get(this.target),
  };

  get key(): string {
    return this.loaded("key");
  }

  get value(): unknown {
    return this.loaded("value");
  }
  set value(value: unknown) {
    this.change("value", value, (key) => this.requests.host.settings.set(key, value));
  }

  delete(): void {
    this.requests.write(() => this.requests.host.settings.set(this.target, undefined));
  }
}

class SettingsPart
  extends Collection<Excel.Setting>
  implements Pick<Excel.SettingCollection, "add" | "getItem" | "getItemOrNullObject" | "items">
{
  constructor(requests: Requests) {
    super(requests, "the settings", () =>
      requests.host.settings.keys().map((key) => settingOf(requests, { find: () => key, what: `a setting ${key}` })),
    );
  }

  add(key: string, value: unknown): Excel.Setting {
    const { settings } = this.requests.host;
    this.requests.write(() => settings.set(key, value));
    return this.getItem(key);
  }

  getItem(key: string): Excel.Setting {
    return settingOf(this.requests, this.lookFor(key));
  }

  getItemOrNullObject(key: string): Excel.Setting {
    return settingOf(this.requests, { ...this.lookFor(key), orNull: true });
  }

  private lookFor(key: string): Lookup<string> {
    const { settings } = this.requests.host;
    return { find: () => (settings.has(key) ? key : null), what: `a setting ${key}` };
  }
}

const settingOf = (requests: Requests, finding: Lookup<string>): Excel.Setting =>
  whole<Excel.Setting>(new SettingPart(requests, finding), "Setting");

export const settingsOf = (requests: Requests): Excel.SettingCollection =>
  whole<Excel.SettingCollection>(new SettingsPart(requests), "SettingCollection");
