import { useWakeLock } from "../../timing/index.ts";
import { useDues } from "./use-dues.ts";

/** Keeps the screen on while something is due on this sheet, and says so where the phone refuses. */
export function ScreenNote() {
  const { dues } = useDues();
  const wake = useWakeLock(dues.length > 0);
  if (wake !== "refused") return null;
  return <p className="quiet">This screen may go dark: the clocks go on, but cannot call. Set a watch too.</p>;
}
