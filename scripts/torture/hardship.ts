/** What a round does to the station. Each ends with a server that is gone and a folder that is as it may be found. */
export const HARDSHIPS = [
  "kill",
  "terminate",
  "cut-connections",
  "restore",
  "fail-over",
  "full-disk",
  "read-only-folder",
  "clock-back",
  "clock-ahead",
] as const;

export type Hardship = (typeof HARDSHIPS)[number];

/** How a server is started for a hardship. */
export interface Start {
  /** How far its clock is off [ms]. */
  readonly clockOffset: number;
  /** How long after its process began it jumps by that; from the beginning where absent [ms]. */
  readonly jumpAfter?: number;
  /** The most that any of its files may grow to [512 bytes], by the system's own quota; none where absent. */
  readonly quota?: number;
}

const DAY_MS = 86_400_000;

/** @param chance - from 0 to below 1 */
export function startFor(hardship: Hardship, chance: () => number): Start {
  if (hardship === "clock-back") return jumping(-DAY_MS * (1 + Math.floor(chance() * 3000)), chance);
  if (hardship === "clock-ahead") return jumping(DAY_MS * (1 + Math.floor(chance() * 30)), chance);
  if (hardship === "full-disk") return { clockOffset: 0, quota: Math.ceil((60_000 + chance() * 60_000) / 512) };
  return { clockOffset: 0 };
}

/** Half of the clocks are wrong from the start; the others jump under load. */
function jumping(clockOffset: number, chance: () => number): Start {
  return chance() < 0.5 ? { clockOffset } : { clockOffset, jumpAfter: 1500 + chance() * 1500 };
}
