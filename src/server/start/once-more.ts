/**
 * Makes a task that never runs twice at once: called while it runs, it runs once more afterwards, however often it
 * was called.
 *
 * @param task - what to do
 * @param failed - told where the task fails; the next call runs it again
 */
export function onceMore(task: () => Promise<void>, failed: (cause: unknown) => void): () => void {
  let running = false;
  let again = false;
  const run = async (): Promise<void> => {
    running = true;
    do {
      again = false;
      await task().catch(failed);
    } while (again);
    running = false;
  };
  return () => {
    again = running;
    if (!running) void run();
  };
}
