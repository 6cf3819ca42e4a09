import { useWords } from "#web/language/index.ts";
import { useWakeLock } from "#web/timing/index.ts";
import { useDues } from "../top/use-dues.ts";

/** Keeps the screen on while something is due on this sheet, and says so where the phone refuses. */
export function ScreenNote() {
  const words = useWords("sheet");
  const { dues } = useDues();
  const wake = useWakeLock(dues.length > 0);
  if (wake !== "refused") return null;
  return <p className="quiet">{words.goesDark()}</p>;
}
