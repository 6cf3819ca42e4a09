import { useEffect, useRef } from "react";

/**
 * Takes the focus when what had it has gone from the screen, as a pressed answer does once it is given.
 * Whoever reads or works by keyboard goes on here instead of at the top of the page.
 */
export function useFocusIfLost<Place extends HTMLElement>() {
  const place = useRef<Place>(null);
  useEffect(() => {
    if (document.activeElement !== null && document.activeElement !== document.body) return;
    place.current?.focus({ preventScroll: true });
    place.current?.scrollIntoView({ block: "nearest" });
  }, []);
  return place;
}
