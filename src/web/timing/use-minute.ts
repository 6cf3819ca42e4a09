import { useEffect, useState } from "react";

const MINUTE = 60_000;
const LOOK = 5_000;

/** The wall clock in whole minutes [ms]: it changes once a minute, also after a locked phone wakes. */
export function useMinute(): number {
  const [minute, setMinute] = useState(wholeMinute);
  useEffect(() => {
    const look = () => setMinute(wholeMinute());
    const looking = setInterval(look, LOOK);
    document.addEventListener("visibilitychange", look);
    return () => {
      clearInterval(looking);
      document.removeEventListener("visibilitychange", look);
    };
  }, []);
  return minute;
}

function wholeMinute(): number {
  return Math.floor(Date.now() / MINUTE) * MINUTE;
}
