import { isStartedByKey } from "#kit";
import type { StationView } from "#web/device/index.ts";
import type { Drive } from "../hazards/moments.ts";

/** What turns a kit's pump, by its pattern: an engine where it has one, by cord or by key. Nobody knows it of a pump that is no kit of ours. */
export function driveOf({ kits, patterns }: Pick<StationView, "kits" | "patterns">, kit: string | undefined): Drive {
  const pattern = patterns.get(kits.find(({ id }) => id === kit)?.pattern ?? "");
  if (!pattern) return "unknown";
  if (pattern.engine === undefined) return "mains";
  return isStartedByKey(pattern) ? "key" : "engine";
}
