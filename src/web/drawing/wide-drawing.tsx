import { useEffect, useRef, useState, type ReactNode, type RefObject } from "react";

/** Holds a drawing that is made for the width there is [px], once that is known. */
export function WideDrawing({ children }: { readonly children: (width: number) => ReactNode }) {
  const [seen, width] = useWidth<HTMLDivElement>();
  return (
    <div ref={seen} className="drawing">
      {width > 0 && children(width)}
    </div>
  );
}

/** Width of an element [px], kept up to date, so that a drawing is made at the size it is seen and its words stay legible. */
function useWidth<Seen extends HTMLElement>(): readonly [RefObject<Seen | null>, number] {
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
