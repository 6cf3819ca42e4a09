import type { StationView } from "../../../device/index.ts";
import type { Drive } from "../hazards/moments.ts";

/** What turns a kit's pump, by its pattern: an engine where it has one. Nobody knows it of a pump that is no kit of ours. */
export function driveOf({ kits, patterns }: Pick<StationView, "kits" | "patterns">, kit: string | undefined): Drive {
  const pattern = patterns.get(kits.find(({ id }) => id === kit)?.pattern ?? "");
  if (!pattern) return "unknown";
  return pattern.engine === undefined ? "mains" : "engine";
}
