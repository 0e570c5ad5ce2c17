import { LocaleType, type LogLevel, Univer } from "@univerjs/core";
import { readArrayConstantsAsText } from "./functions/arrayConstant";
import { patchEngine } from "./patches";

/** An engine that reads and calculates as Excel does, without plugins yet. */
export function startEngine(logLevel: LogLevel): Univer {
  readArrayConstantsAsText();
  patchEngine();
  return new Univer({ locale: LocaleType.EN_US, locales: { [LocaleType.EN_US]: {} }, logLevel });
}
