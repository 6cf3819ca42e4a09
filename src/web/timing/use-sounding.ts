import { useEffect } from "react";
import { alarm } from "./alarm.ts";

/** How often it sounds again until somebody answers [ms]. */
const REPEAT = 5000;

/** Sound and shaking for as long as what calls is on the screen. */
export function useSounding(): void {
  useEffect(() => {
    alarm.sound();
    const sounding = setInterval(alarm.sound, REPEAT);
    return () => clearInterval(sounding);
  }, []);
}
