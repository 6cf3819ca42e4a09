import { useEffect, useRef } from "react";

/**
 * Brings a part to the top of the screen, so that what it opens does not stand below the fold.
 *
 * @param asked - what it opens; each time that changes it comes in sight
 */
export function useInSight<Place extends HTMLElement>(asked: string | false) {
  const place = useRef<Place>(null);
  useEffect(() => {
    if (asked) place.current?.scrollIntoView({ block: "start" });
  }, [asked]);
  return place;
}
