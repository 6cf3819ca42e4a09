import { useEffect, useRef, useState, type RefObject } from "react";

/** Width of an element [px], kept up to date, so that a drawing is made at the size it is seen and its words stay legible. */
export function useWidth<Seen extends HTMLElement>(): readonly [RefObject<Seen | null>, number] {
  const seen = useRef<Seen>(null);
  const [width, setWidth] = useState(0);
  useEffect(() => {
    const element = seen.current;
    if (!element) return;
    const observer = new ResizeObserver(([entry]) => entry && setWidth(Math.floor(entry.contentRect.width)));
    observer.observe(element);
    return () => observer.disconnect();
  }, []);
  return [seen, width];
}
