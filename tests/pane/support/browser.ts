/** What the pane finds in a browser and jsdom lacks. */
Object.assign(globalThis, { IS_REACT_ACT_ENVIRONMENT: true });
window.matchMedia ??= ((query: string) => ({
  matches: false,
  media: query,
  addEventListener: () => undefined,
  removeEventListener: () => undefined,
})) as unknown as typeof window.matchMedia;
// A page printed whole hides what failed.
process.env.DEBUG_PRINT_LIMIT = "0";
