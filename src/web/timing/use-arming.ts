import { useEffect } from "react";
import { alarm } from "./alarm.ts";

/** A browser lets sound out only after a tap or a key: the first one anywhere arms the alarm, also after a reload. */
export function useArming(): void {
  useEffect(() => {
    document.addEventListener("pointerup", alarm.arm);
    document.addEventListener("keydown", alarm.arm);
    return () => {
      document.removeEventListener("pointerup", alarm.arm);
      document.removeEventListener("keydown", alarm.arm);
    };
  }, []);
}
