import { useWords } from "#web/language/index.ts";
import type { Entry } from "#log";
import { useDeviceState } from "#web/device/index.ts";

/** Said of a line that came from another device and that the station is not known to have. */
export function HandedMark({ entry }: { readonly entry: Entry }) {
  const words = useWords("sheetJoin");
  const state = useDeviceState();
  const isHanded = state.kind === "signed-in" && state.handed.some((line) => line.entry.id === entry.id);
  return isHanded && <span className="quiet"> {words.fromOther()}</span>;
}
