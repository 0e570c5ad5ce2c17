/** Runs a task one at a time. Who asks while it is under way shares the run that begins after it. */
export function oneAtATime(task: () => Promise<void>): () => Promise<void> {
  let running: Promise<void> | undefined;
  let next: Promise<void> | undefined;
  const start = (): Promise<void> => (running = task().finally(() => (running = undefined)));
  return () => {
    if (!running) return start();
    next ??= running.then(() => {
      next = undefined;
      return start();
    });
    return next;
  };
}
