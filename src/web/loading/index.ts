import { lazy, type ComponentType, type LazyExoticComponent } from "react";
import { fetchAgain } from "./fetch-again.ts";
import { loadPageAnew } from "./load-page-anew.ts";

/**
 * A component whose file is fetched when it is first shown. One request that fails is asked again: it does not take down
 * the page around it.
 */
export function fetchedLater<Props>(
  load: () => Promise<{ readonly default: ComponentType<Props> }>,
): LazyExoticComponent<ComponentType<Props>> {
  return lazy(() => fetchPart(load));
}

/** A part that no page waits for: tried again, but the page is left as it is. */
export function fetchAside<Part>(load: () => Promise<Part>): Promise<Part> {
  return fetchAgain(load);
}

/**
 * A part without which the page cannot be shown.
 *
 * @throws what the last try threw, where neither further tries nor a page loaded anew can help
 */
export async function fetchPart<Part>(load: () => Promise<Part>): Promise<Part> {
  try {
    return await fetchAside(load);
  } catch (failure) {
    await loadPageAnew(Date.now());
    throw failure;
  }
}
