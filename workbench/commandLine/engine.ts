/** The engine for scripts in tools/: built to dist/tools/engine.cjs. */
export * from "../engine";
export { openHeadless, type HeadlessBook } from "../engine/headless";
export { readBundle } from "./readBundle";
