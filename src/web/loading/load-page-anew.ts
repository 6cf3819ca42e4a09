/** A page that fails so soon again is not helped by loading it once more. Milliseconds. */
const SOON_MS = 60_000;

const LOADED_ANEW = "loaded-anew";

/**
 * Loads the page anew for a part that failed: browsers remember a failed script for as long as the page lives, and give
 * the same failure without asking. Not twice within a minute, and not where the station cannot be reached.
 *
 * @returns only where it is of no use
 */
export async function loadPageAnew(now: number): Promise<void> {
  if (now - Number(sessionStorage.getItem(LOADED_ANEW) ?? 0) < SOON_MS || !(await canBeFetched())) return undefined;
  sessionStorage.setItem(LOADED_ANEW, String(now));
  location.reload();
  return new Promise(() => undefined);
}

/** Whether the app's own page would come: from this device, or from the station. */
async function canBeFetched(): Promise<boolean> {
  return fetch("/index.html").then(
    ({ ok }) => ok,
    () => false,
  );
}
