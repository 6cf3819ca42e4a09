import { useEffect, useRef, type RefObject } from "react";

/**
 * Brings what has just come to be into view, and the focus with it, clear of the strip along the upper edge.
 *
 * @param isWanted - for what is not always news
 * @returns to be given to the element
 */
export function useIntoView<Kind extends HTMLElement = HTMLDivElement>(isWanted = true): RefObject<Kind | null> {
  const place = useRef<Kind>(null);
  useEffect(() => {
    if (!isWanted) return;
    place.current?.focus({ preventScroll: true });
    place.current?.scrollIntoView({ block: "start" });
  }, [isWanted]);
  return place;
}
