import { useEffect, useRef, useState, type RefObject } from "react";
import { unseenOf } from "./seen-to-end.ts";

/** A list that one tap speaks for. */
export interface SeenToEnd {
  readonly list: RefObject<HTMLOListElement | null>;
  /** What lies over the lower edge of the screen, with the button in it. */
  readonly bar: RefObject<HTMLFieldSetElement | null>;
  /** True once all of it has been on the screen. */
  readonly isSeen: boolean;
}

/**
 * Whether all of a list has been on the screen, wherever it is scrolled to now: one tap may stand for what was looked at
 * and for nothing else. Another list begins anew: its component has another key.
 */
export function useSeenToEnd(): SeenToEnd {
  const list = useRef<HTMLOListElement>(null);
  const bar = useRef<HTMLFieldSetElement>(null);
  const [isSeen, setSeen] = useState(false);
  useEffect(() => {
    if (isSeen) return undefined;
    const look = () => setSeen(unseenNow(list.current, bar.current) === 0);
    look();
    const options = { capture: true, passive: true } as const;
    for (const moved of ["scroll", "resize"] as const) addEventListener(moved, look, options);
    return () => {
      for (const moved of ["scroll", "resize"] as const) removeEventListener(moved, look, options);
    };
  }, [isSeen]);
  return { list, bar, isSeen };
}

function unseenNow(list: HTMLElement | null, bar: HTMLElement | null): number {
  if (!list) return 0;
  const over = bar && getComputedStyle(bar).position === "fixed" ? bar.getBoundingClientRect().top : innerHeight;
  return unseenOf(
    Array.from(list.children, (member) => member.getBoundingClientRect()),
    Math.min(over, innerHeight),
  );
}
