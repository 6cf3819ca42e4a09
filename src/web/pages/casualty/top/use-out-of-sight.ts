import { useEffect, useState, type RefObject } from "react";

/** True once an element has been scrolled away over the upper edge. */
export function useOutOfSight(seen: RefObject<HTMLElement | null>): boolean {
  const [isAway, setAway] = useState(false);
  useEffect(() => {
    if (!seen.current) return undefined;
    const observer = new IntersectionObserver((entries) => {
      const newest = entries.at(-1);
      if (newest) setAway(!newest.isIntersecting && newest.boundingClientRect.top < 0);
    });
    observer.observe(seen.current);
    return () => observer.disconnect();
  }, [seen]);
  return isAway;
}
