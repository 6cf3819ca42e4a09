import { useWakeLock } from "#web/timing/index.ts";
import { useDues } from "../top/use-dues.ts";

/** Keeps the screen on while something is due on this sheet, and says so where the phone refuses. */
export function ScreenNote() {
  const { dues } = useDues();
  const wake = useWakeLock(dues.length > 0);
  if (wake !== "refused") return null;
  return <p className="quiet">This screen may go dark: the clocks go on, but no alarm will sound. Set a watch too.</p>;
}
