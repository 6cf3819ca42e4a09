/** Milliseconds waited before each further try. */
export const WAITS_MS = [300, 1500] as const;

/**
 * Fetches a part of the app; where that fails, tries again after each of the waits.
 *
 * @param load - fetches the part; called anew for each try
 * @param wait - resolves after so many milliseconds
 * @throws what the last try threw, once all have failed
 */
export async function fetchAgain<Part>(
  load: () => Promise<Part>,
  wait: (ms: number) => Promise<void> = pause,
  waits: readonly number[] = WAITS_MS,
): Promise<Part> {
  const [next, ...later] = waits;
  if (next === undefined) return load();
  try {
    return await load();
  } catch {
    await wait(next);
    return fetchAgain(load, wait, later);
  }
}

function pause(ms: number): Promise<void> {
  return new Promise((resolve) => setTimeout(resolve, ms));
}
