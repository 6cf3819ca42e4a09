import { useEffect, useState } from "react";

/**
 * The clock now, read afresh while something runs. The ticks only ask for a new picture; what is shown is always
 * the difference of two instants, so a missed tick costs nothing.
 *
 * @param running - false stops asking
 * @returns milliseconds since 1970-01-01 UTC
 */
export function useNow(running: boolean): number {
  const [now, setNow] = useState(() => Date.now());
  useEffect(() => {
    if (!running) return undefined;
    const read = () => setNow(Date.now());
    read();
    const ticking = setInterval(read, 250);
    document.addEventListener("visibilitychange", read);
    return () => {
      clearInterval(ticking);
      document.removeEventListener("visibilitychange", read);
    };
  }, [running]);
  return now;
}
